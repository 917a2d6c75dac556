package noctuary.effect;

import java.util.Arrays;
import noctuary.stats.Selection;

/** Light within a circle above the background around it, on one layer of a tile. */
final class Aperture {
    /** Radii in star widths. */
    private static final double LIGHT = 1.2;

    private static final double INNER = 2.2;
    static final double OUTER = 3.5;

    private final double fwhm;
    /** Width that the ring is spaced by: it lies beyond what was smeared out of the circle. */
    private final double ringWidth;

    /** @param smear of the stars besides their width, in quadrature */
    Aperture(double fwhm, double smear) {
        this.fwhm = fwhm;
        this.ringWidth = Math.hypot(fwhm, smear);
    }

    boolean fits(Tile tile, double x, double y) {
        double reach = OUTER * ringWidth;
        return x - reach >= tile.x()
                && y - reach >= tile.y()
                && x + reach <= tile.x() + tile.width() - 1
                && y + reach <= tile.y() + tile.height() - 1;
    }

    /** Sum over the inner circle minus the median of the ring; the place in pixels of the picture. */
    double light(Tile tile, float[] layer, double x, double y) {
        int reach = (int) Math.ceil(OUTER * ringWidth);
        int cx = (int) Math.rint(x);
        int cy = (int) Math.rint(y);
        float[] ring = new float[(2 * reach + 1) * (2 * reach + 1)];
        int ringCount = 0;
        double sum = 0;
        int count = 0;
        for (int py = Math.max(tile.y(), cy - reach); py <= Math.min(tile.y() + tile.height() - 1, cy + reach); py++) {
            for (int px = Math.max(tile.x(), cx - reach);
                    px <= Math.min(tile.x() + tile.width() - 1, cx + reach);
                    px++) {
                double apart = Math.hypot(px - x, py - y);
                float value = layer[tile.indexOf(px, py)];
                if (Float.isNaN(value)) {
                    continue;
                }
                if (apart <= LIGHT * fwhm) {
                    sum += value;
                    count++;
                } else if (apart >= INNER * ringWidth && apart <= OUTER * ringWidth) {
                    ring[ringCount++] = value;
                }
            }
        }
        float[] around = Arrays.copyOf(ring, ringCount);
        return sum - count * Selection.median(around, ringCount);
    }
}
