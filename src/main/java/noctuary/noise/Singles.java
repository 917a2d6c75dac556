package noctuary.noise;

import java.util.Arrays;
import noctuary.image.Plane;
import noctuary.stats.Selection;

/**
 * Tells a single deviating pixel from the core of a star: a star, however sharp, lights the eight pixels around. Those
 * are weighed as the sharpest star to be met (Gaussian, FWHM 1.4 px) lights them; on a mosaic they lie under other
 * filters, and each is compared with the background of its own.
 */
final class Singles {
    /** Share of the central pixel found in each neighbour of such a star, beside and diagonal. */
    private static final double BESIDE = 0.34;

    private static final double DIAGONAL = 0.115;
    private static final double WEIGHT_NORM = Math.sqrt(4 * (BESIDE * BESIDE + DIAGONAL * DIAGONAL));
    /** Neighbours of a single pixel are noise: their weighed sum stays below this many sigmas, */
    private static final double MOST_NOISE = 2.5;
    /** or below this share of the pixel where that is less, since a faint sharp star is not far from that. */
    private static final double MOST_SHARE = 0.2;
    /** A little of a very bright single may leak: this share of what a star would show. */
    private static final double MOST_LEAK = 0.15;

    private static final double LEAST_SIGMAS = 9;

    private static final int SIDE = 5;

    private static final int ROOM = 256;

    private final Plane plane;
    private final Grid grid;
    private final float[] ring = new float[16];
    /** Residuals of the 5 x 5 pixels around, NaN where there is none. */
    private final double[] patch = new double[SIDE * SIDE];

    private int[] columns = new int[ROOM];
    private int[] rows = new int[ROOM];
    private float[] residuals = new float[ROOM];
    private float[] sigmas = new float[ROOM];
    private int remembered;
    private long hot;
    private long cold;

    Singles(Grid grid) {
        this.grid = grid;
        this.plane = grid.pixels().plane();
    }

    long hot() {
        return hot;
    }

    long cold() {
        return cold;
    }

    /**
     * To be judged later: what judges is long, and the compiler would take it into the loop over all pixels.
     *
     * @param residual of pixel (x, y), more than eight {@code sigma} off and farthest in its row
     */
    void remember(int x, int y, float residual, float sigma) {
        if (remembered == columns.length) {
            columns = Arrays.copyOf(columns, 2 * remembered);
            rows = Arrays.copyOf(rows, 2 * remembered);
            residuals = Arrays.copyOf(residuals, 2 * remembered);
            sigmas = Arrays.copyOf(sigmas, 2 * remembered);
        }
        columns[remembered] = x;
        rows[remembered] = y;
        residuals[remembered] = residual;
        sigmas[remembered++] = sigma;
    }

    /** Counts those of the remembered ones that stand alone. */
    void judge() {
        for (int i = 0; i < remembered; i++) {
            if (standsAlone(columns[i], rows[i], residuals[i], sigmas[i])) {
                hot += residuals[i] > 0 ? 1 : 0;
                cold += residuals[i] < 0 ? 1 : 0;
            }
        }
        remembered = 0;
    }

    private boolean standsAlone(int x, int y, float residual, float sigma) {
        if (less(residual, x, y - 1) || less(residual, x, y + 1)) {
            return false;
        }
        double allowed = allowed(Math.abs(residual) / sigma);
        lookBeside(x, y);
        if (neighbours(Math.signum(residual), 0) / sigma > allowed && !overLight(x, y, sigma)) {
            return false;
        }
        lookAround(x, y);
        int count = fillRing();
        double around = Selection.median(ring.clone(), count);
        double spread = Selection.sigma(ring, count, around);
        double shift = count > 0 && Math.abs(around) > 1.5 * sigma ? around : 0;
        double noise = Math.max(sigma, 0.7 * spread);
        double contrast = Math.abs(residual - shift) / noise;
        return contrast > LEAST_SIGMAS
                && (residual - shift) * residual > 0
                && neighbours(Math.signum(residual), shift) / noise <= allowed(contrast);
    }

    /** Whether the pixel lies less far from the background than (x, y) on the same side, as all of a star but one does. */
    private boolean less(float residual, int x, int y) {
        double other = residual(x, y);
        return residual > 0 ? other > residual : other < residual;
    }

    private static double allowed(double height) {
        return Math.max(Math.min(MOST_NOISE, MOST_SHARE * height), MOST_LEAK * WEIGHT_NORM * height);
    }

    /** Whether the pixels two steps away, too, lie well off the background: the pixel stands in a nebula or a halo. */
    private boolean overLight(int x, int y, float sigma) {
        double sum = 0;
        int count = 0;
        for (int d = -2; d <= 2; d += 4) {
            double beside = residual(x + d, y);
            double above = residual(x, y + d);
            sum += (beside == beside ? beside : 0) + (above == above ? above : 0);
            count += 2;
        }
        return Math.abs(sum) / count > 1.5 * sigma;
    }

    /** Weighed sum of the eight neighbours above {@code shift}, over the norm of the weights. */
    private double neighbours(double sign, double shift) {
        double sum = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                double weight = dx == 0 || dy == 0 ? BESIDE : DIAGONAL;
                double r = dx == 0 && dy == 0 ? Double.NaN : patchAt(dx, dy);
                sum += r == r ? sign * weight * (r - shift) : 0;
            }
        }
        return sum / WEIGHT_NORM;
    }

    /** The sixteen pixels two steps away. */
    private int fillRing() {
        int count = 0;
        for (int dy = -2; dy <= 2; dy++) {
            for (int dx = -2; dx <= 2; dx++) {
                if (Math.max(Math.abs(dx), Math.abs(dy)) == 2) {
                    double r = patchAt(dx, dy);
                    if (r == r) {
                        ring[count++] = (float) r;
                    }
                }
            }
        }
        return count;
    }

    /** The nine pixels in the middle only: they settle the core of a star, which most are. */
    private void lookBeside(int x, int y) {
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                patch[(dy + 2) * SIDE + dx + 2] = residual(x + dx, y + dy);
            }
        }
    }

    private void lookAround(int x, int y) {
        for (int i = 0; i < patch.length; i++) {
            patch[i] = residual(x + i % SIDE - 2, y + i / SIDE - 2);
        }
    }

    private double patchAt(int dx, int dy) {
        return patch[(dy + 2) * SIDE + dx + 2];
    }

    private double residual(int x, int y) {
        if (x < 0 || y < 0 || x >= plane.width() || y >= plane.height()) {
            return Double.NaN;
        }
        double r = plane.at(x, y) - grid.levelAt(x, y);
        return Double.isFinite(r) ? r : Double.NaN;
    }
}
