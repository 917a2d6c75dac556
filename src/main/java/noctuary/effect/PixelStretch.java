package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.image.Asinh;
import noctuary.stats.Robust;

/** The stretch as single pixels tell it: their own curve, and beyond it the asinh curve that comes nearest to it. */
final class PixelStretch {
    private static final int FEWEST = 8;
    private static final double SIGMA = 5e-4;
    /** Most that the asinh curve may be off when the stretch is said to be one, root mean square share of white. */
    private static final double MOST_OFF = 0.003;

    private static final double[] SOFTNESSES = {0.3, 3, 30, 300, 3000};
    private static final String DARK =
            "the sky alone shows the stretch: where stars are, the picture follows no single curve";

    private final PixelCurve pixels;
    private final double sky;
    private final double noise;

    PixelStretch(PixelCurve pixels, double sky, double noise) {
        this.pixels = pixels;
        this.sky = sky;
        this.noise = noise;
    }

    /** @param stars heights of stars, in the origin's units above zero */
    Stretching of(List<Tile> tiles, double[] stars) {
        double[] at = pixels.at();
        boolean dark = stars.length > 0 && Robust.median(stars) - sky > 2 * (at[at.length - 1] - sky);
        return dark
                ? CellStretch.plain(tiles)
                        .map(cells -> over(tiles, cells.transfer().curve()))
                        .filter(transfer -> !transfer.bent())
                        .map(Stretching::sure)
                        .orElseGet(() -> new Stretching(over(tiles, curve()), 1, false, false, DARK, DARK))
                : Stretching.sure(over(tiles, curve()));
    }

    /** A curve, and what pixels are off it. */
    private Transfer over(List<Tile> tiles, Curve curve) {
        double[] at = pixels.at();
        double[] value = pixels.value();
        double[] off = IntStream.range(0, at.length)
                .mapToDouble(k -> value[k] - curve.at(at[k]))
                .toArray();
        double rms = Math.sqrt(Arrays.stream(off).map(o -> o * o).average().orElse(0));
        return Transfer.over(tiles, curve, new Bends(at, off), rms > MOST_OFF);
    }

    boolean enough() {
        return pixels.skyIsPure() && pixels.at().length >= FEWEST;
    }

    private Curve curve() {
        double[] at = pixels.at();
        double[] value = pixels.value();
        double[] sigma = new double[at.length];
        Arrays.fill(sigma, SIGMA);
        Simplex.Corner best = null;
        for (double softness : SOFTNESSES) {
            Simplex.Corner corner = Simplex.lowest(
                    sky,
                    Math.log(softness * noise),
                    -noise,
                    1,
                    (middle, s) -> line(at, value, sigma, middle, Math.exp(s)).misfit());
            best = best == null || corner.value() < best.value() ? corner : best;
        }
        double softness = Math.exp(best.y());
        RobustLine line = line(at, value, sigma, best.x(), softness);
        return new Curve(best.x(), softness, line.base(), line.height());
    }

    private static RobustLine line(double[] at, double[] value, double[] sigma, double middle, double softness) {
        double[] bent =
                Arrays.stream(at).map(v -> Asinh.asinh((v - middle) / softness)).toArray();
        RobustLine line = RobustLine.of(bent, value, sigma);
        return line.height() > 0 ? line : new RobustLine(line.base(), line.height(), Double.POSITIVE_INFINITY);
    }
}
