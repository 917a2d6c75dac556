package noctuary.effect;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import noctuary.stars.Star;

/**
 * By how much bright stars became wider at half of their height, without a model of a star's shape: the mean of their
 * profiles, as an even polynomial of the distance, before and after.
 */
final class HalfHeight {
    private static final double BRIGHT_SNR = 30;
    private static final double MOST_HEIGHT = 0.95;
    private static final int FEWEST = 8;
    /** Looked at so far from the middle, in star widths. */
    private static final double REACH = 0.9;
    /** The middle, whose mean stands for a star's height. */
    private static final double CORE = 0.25;

    private static final double BACKGROUND = 4.5;
    private static final double BACKGROUND_END = 5.5;
    private static final int POWERS = 4;
    private static final double PACE = 0.001;

    private final Layers layers;
    private final double fwhm;
    private final double[][] before = new double[POWERS][POWERS + 1];
    private final double[][] after = new double[POWERS][POWERS + 1];
    private int count;

    private HalfHeight(Layers layers, double fwhm) {
        this.layers = layers;
        this.fwhm = fwhm;
    }

    /** @return nothing with too few bright stars */
    static OptionalDouble ratio(Layers layers, List<Star> stars, Laying laying, double fwhm) {
        HalfHeight half = new HalfHeight(layers, fwhm);
        for (Star star : stars) {
            if (star.measured() && star.snr() > BRIGHT_SNR) {
                layers.tiles().forEach(tile -> half.add(tile, laying.onPicture(star)));
            }
        }
        double ratio = half.count < FEWEST ? Double.NaN : at(half.after) / at(half.before);
        return Double.isNaN(ratio) ? OptionalDouble.empty() : OptionalDouble.of(ratio);
    }

    private void add(Tile tile, double[] at) {
        int index = Rings.inside(tile, at, BACKGROUND_END * fwhm);
        if (index >= 0 && layers.shown().get(tile)[index] <= MOST_HEIGHT) {
            add(tile, at, layers.stretched(), before);
            add(tile, at, layers.shown(), after);
            count++;
        }
    }

    private void add(Tile tile, double[] at, Map<Tile, float[]> layers, double[][] sums) {
        float[] layer = layers.get(tile);
        double background = Rings.annulus(tile, layer, at, BACKGROUND * fwhm, BACKGROUND_END * fwhm);
        double height = Rings.annulus(tile, layer, at, 0, CORE * fwhm) - background;
        int reach = (int) Math.ceil(REACH * fwhm);
        int left = (int) Math.rint(at[0]) - reach;
        int top = (int) Math.rint(at[1]) - reach;
        for (int i = 0; i < (2 * reach + 1) * (2 * reach + 1); i++) {
            int x = left + i % (2 * reach + 1);
            int y = top + i / (2 * reach + 1);
            double apart = Math.hypot(x - at[0], y - at[1]) / fwhm;
            if (apart < REACH) {
                add(sums, apart, (layer[tile.indexOf(x, y)] - background) / height);
            }
        }
    }

    private static void add(double[][] sums, double apart, double value) {
        for (int a = 0; a < POWERS; a++) {
            for (int b = 0; b < POWERS; b++) {
                sums[a][b] += Math.pow(apart, 2.0 * (a + b));
            }
            sums[a][POWERS] += Math.pow(apart, 2.0 * a) * value;
        }
    }

    /** Distance of half of the height; NaN when the profile does not come down to it. */
    private static double at(double[][] sums) {
        double[] even = Elimination.solve(sums);
        for (double apart = 0; apart < REACH; apart += PACE) {
            double r2 = apart * apart;
            if (even[0] + r2 * (even[1] + r2 * (even[2] + r2 * even[3])) < even[0] / 2) {
                return apart;
            }
        }
        return Double.NaN;
    }
}
