package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import noctuary.stats.Robust;

/**
 * What of the structure in bright, star-free parts is left: the power of the picture over that of the stretched origin
 * on the same windows, by period. Windows count where structure of 8 to 16 px stands well above what the background has.
 */
final class Detail {
    private static final double LONG = 16;
    private static final double MIDDLE = 8;
    private static final double SHORT = 4;
    /** Power over that of the background before a window counts as having structure. */
    private static final double STANDS_OUT = 4;

    private static final int FEWEST = 5;
    private static final double MOST_STARS = 0.05;

    private final List<double[]> before = new ArrayList<>();
    private final List<double[]> after = new ArrayList<>();

    static Amount kept(Layers layers, Ground ground) {
        List<boolean[]> masks = ground.masks();
        Detail detail = new Detail();
        double noise = Robust.median(ground.blocks().stream()
                .mapToDouble(b -> Spectrum.power(
                        window(
                                layers.stretched().get(b.tile()),
                                masks.get(layers.tiles().indexOf(b.tile())),
                                b.tile(),
                                b.left(),
                                b.top()),
                        MIDDLE,
                        LONG))
                .toArray());
        for (int t = 0; t < layers.tiles().size(); t++) {
            detail.look(layers, layers.tiles().get(t), masks.get(t), STANDS_OUT * noise);
        }
        if (detail.before.size() < FEWEST) {
            return Amount.absent("no bright part without stars shows structure to compare");
        }
        return Amount.known(detail.ratio(), "the structure has no power at 4 to 8 px");
    }

    private void look(Layers layers, Tile tile, boolean[] mask, double least) {
        Map<Tile, float[]> stretched = layers.stretched();
        for (int y = 0; y + Spectrum.SIDE <= tile.height(); y += Spectrum.SIDE) {
            for (int x = 0; x + Spectrum.SIDE <= tile.width(); x += Spectrum.SIDE) {
                if (stars(mask, tile, x, y) <= MOST_STARS) {
                    double[] window = window(stretched.get(tile), mask, tile, x, y);
                    double power = Spectrum.power(window, MIDDLE, LONG);
                    if (power > least) {
                        before.add(window);
                        after.add(window(layers.shown().get(tile), mask, tile, x, y));
                    }
                }
            }
        }
    }

    private double ratio() {
        return after.stream().mapToDouble(w -> Spectrum.power(w, SHORT, MIDDLE)).sum()
                / before.stream()
                        .mapToDouble(w -> Spectrum.power(w, SHORT, MIDDLE))
                        .sum();
    }

    private static double stars(boolean[] mask, Tile tile, int left, int top) {
        int count = 0;
        for (int i = 0; i < Spectrum.SIDE * Spectrum.SIDE; i++) {
            int at = (top + i / Spectrum.SIDE) * tile.width() + left + i % Spectrum.SIDE;
            count += mask[at] || Float.isNaN(tile.origin()[at]) ? 1 : 0;
        }
        return count / (double) (Spectrum.SIDE * Spectrum.SIDE);
    }

    /** Missing pixels and those with star light have the mean of the others. */
    private static double[] window(float[] layer, boolean[] mask, Tile tile, int left, int top) {
        double[] window = new double[Spectrum.SIDE * Spectrum.SIDE];
        double sum = 0;
        int count = 0;
        for (int i = 0; i < window.length; i++) {
            int at = (top + i / Spectrum.SIDE) * tile.width() + left + i % Spectrum.SIDE;
            window[i] = mask[at] ? Double.NaN : layer[at];
            sum += Double.isNaN(window[i]) ? 0 : window[i];
            count += Double.isNaN(window[i]) ? 0 : 1;
        }
        for (int i = 0; i < window.length; i++) {
            window[i] = Double.isNaN(window[i]) ? sum / Math.max(1, count) : window[i];
        }
        return window;
    }
}
