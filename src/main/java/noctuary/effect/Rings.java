package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import noctuary.stars.Star;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * Dark rings and halos around bright stars: medians over annuli, then over stars.
 *
 * @param darkPercent how far the darkest ring lies below the background, percent of the star's height; 0 for none
 * @param haloPercent how much light two to four widths out the picture has above the stretched origin, as before
 */
record Rings(Amount darkPercent, Amount haloPercent) {
    private static final double BRIGHT_SNR = 60;
    private static final double MOST_HEIGHT = 0.95;
    private static final double LEAST_HEIGHT = 0.1;
    private static final int FEWEST = 8;
    private static final double STEP = 0.5;
    private static final double FIRST = 0.75;
    private static final int ANNULI = 7;
    private static final int FIRST_OF_HALO = 3;
    private static final double BACKGROUND = 4.5;
    private static final double REACH = 5.5;

    static Rings of(Layers layers, List<Star> stars, Laying laying, double fwhm) {
        List<double[]> shown = new ArrayList<>();
        List<double[]> stretched = new ArrayList<>();
        for (Star star : stars) {
            double[] at = laying.onPicture(star);
            if (star.measured() && star.snr() > BRIGHT_SNR) {
                for (Tile tile : layers.tiles()) {
                    add(layers, tile, at, fwhm, stretched, shown);
                }
            }
        }
        if (shown.size() < FEWEST) {
            Amount few = Amount.absent("too few bright stars that are not burnt out");
            return new Rings(few, few);
        }
        double dark = 0;
        double halo = 0;
        for (int k = 0; k < ANNULI; k++) {
            int annulus = k;
            double after = median(shown, annulus);
            double before = median(stretched, annulus);
            dark = Math.max(dark, Math.min(-after, before - after));
            halo = k >= FIRST_OF_HALO ? Math.max(halo, after - before) : halo;
        }
        return new Rings(Amount.of(100 * dark), Amount.of(100 * halo));
    }

    private static double median(List<double[]> profiles, int annulus) {
        return Robust.median(profiles.stream().mapToDouble(p -> p[annulus]).toArray());
    }

    /** Index of the pixel nearest to a place; -1 where the tile does not reach so far around it. */
    static int inside(Tile tile, double[] at, double reach) {
        boolean inside = at[0] - reach >= tile.x()
                && at[1] - reach >= tile.y()
                && at[0] + reach < tile.x() + tile.width()
                && at[1] + reach < tile.y() + tile.height();
        return inside ? tile.indexOf((int) Math.rint(at[0]), (int) Math.rint(at[1])) : -1;
    }

    private static void add(
            Layers layers, Tile tile, double[] at, double fwhm, List<double[]> stretched, List<double[]> shown) {
        int index = inside(tile, at, REACH * fwhm);
        if (index < 0 || layers.shown().get(tile)[index] > MOST_HEIGHT) {
            return;
        }
        double[] before = profile(tile, layers.stretched().get(tile), at, fwhm);
        double[] after = profile(tile, layers.shown().get(tile), at, fwhm);
        if (before[ANNULI] > LEAST_HEIGHT && after[ANNULI] > LEAST_HEIGHT) {
            stretched.add(Arrays.stream(before).map(v -> v / before[ANNULI]).toArray());
            shown.add(Arrays.stream(after).map(v -> v / after[ANNULI]).toArray());
        }
    }

    /** Medians of the annuli above the background around, and last the height of the middle. */
    private static double[] profile(Tile tile, float[] layer, double[] at, double fwhm) {
        double background = annulus(tile, layer, at, BACKGROUND * fwhm, REACH * fwhm);
        double[] profile = new double[ANNULI + 1];
        for (int k = 0; k < ANNULI; k++) {
            double from = (FIRST + k * STEP) * fwhm;
            profile[k] = annulus(tile, layer, at, from, from + STEP * fwhm) - background;
        }
        profile[ANNULI] = layer[tile.indexOf((int) Math.rint(at[0]), (int) Math.rint(at[1]))] - background;
        return profile;
    }

    /** Median of the pixels between two distances from a place. */
    static double annulus(Tile tile, float[] layer, double[] at, double from, double to) {
        int reach = (int) Math.ceil(to);
        int cx = (int) Math.rint(at[0]);
        int cy = (int) Math.rint(at[1]);
        float[] values = new float[(2 * reach + 1) * (2 * reach + 1)];
        int count = 0;
        for (int y = cy - reach; y <= cy + reach; y++) {
            for (int x = cx - reach; x <= cx + reach; x++) {
                double apart = Math.hypot(x - at[0], y - at[1]);
                int index = tile.indexOf(x, y);
                if (apart >= from && apart < to && index >= 0 && !Float.isNaN(layer[index])) {
                    values[count++] = layer[index];
                }
            }
        }
        return Selection.median(values, count);
    }
}
