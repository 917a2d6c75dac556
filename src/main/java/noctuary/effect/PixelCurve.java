package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.image.Asinh;

/**
 * The curve that single pixels follow, where they do: at some levels, or at all, most pixels of the picture are one
 * function of those of the origin, as under a stretch alone, or under a step that left them as they were.
 */
final class PixelCurve {
    /** Width of a level, in asinh of sigmas above the sky. */
    private static final double WIDTH = 0.1;

    private static final int FEWEST_PIXELS = 8;
    /** Most that pixels may be off those next to them in level, in noise of the picture. */
    private static final double MOST_OFF = 0.01;
    /** The same on the sky, where pixels are dense: little enough that a gentle, wide sharpening shows. */
    private static final double MOST_OFF_SKY = 0.002;
    /** Noise of the picture below which steps between values hide whether pixels follow, in such steps. */
    private static final double FEWEST_STEPS = 1.5;
    /** Share of the sky that must be neither black nor white before it tells anything. */
    private static final double LEAST_SHOWN = 0.5;
    /** Share of the pixels of a level that need not follow. */
    private static final double OTHERS = 0.4;

    private static final int ABOUT = 3;
    private static final int THIN = 200;
    private static final double FEW = 0.05;
    private static final double MOST_OF_SKY = 0.9;

    private final PixelPairs pixels;
    private final double seen;
    private final double quantum;
    private final List<double[]> points = new ArrayList<>();
    private int skyLevels;
    private int skyPure;

    private PixelCurve(PixelPairs pixels) {
        this.pixels = pixels;
        this.seen = pixels.shownNoise();
        this.quantum = pixels.quantum();
    }

    /** @param noise of a pixel of the origin about the sky */
    static PixelCurve of(List<Tile> tiles, double sky, double noise) {
        PixelCurve curve = new PixelCurve(PixelPairs.of(tiles, sky, noise));
        curve.look();
        return curve;
    }

    /** Whether the sky follows a curve, so that nothing but a stretch befell it. */
    boolean skyIsPure() {
        return skyLevels > 0
                && skyPure >= MOST_OF_SKY * skyLevels
                && pixels.skyShown() >= LEAST_SHOWN
                && seen >= FEWEST_STEPS * quantum;
    }

    /** Levels of the origin where pixels follow a curve, rising. */
    double[] at() {
        return points.stream().mapToDouble(p -> p[0]).toArray();
    }

    /** Shares of white there. */
    double[] value() {
        return points.stream().mapToDouble(p -> p[1]).toArray();
    }

    private void look() {
        int all = pixels.origin().length;
        int from = 0;
        while (from < all) {
            int to = from + 1;
            double end = u(from) + WIDTH;
            while (to < all && (to - from < FEWEST_PIXELS || u(to) < end)) {
                to++;
            }
            add(from, to);
            from = to;
        }
    }

    private double u(int i) {
        return Asinh.asinh((pixels.origin()[i] - pixels.sky()) / pixels.noise());
    }

    private void add(int from, int to) {
        double[] off = IntStream.range(from, to).mapToDouble(this::off).toArray();
        boolean ofSky = pixels.ofSky((from + to) / 2);
        double allowed = quantum > 0 ? quantum / 2 : seen * (ofSky ? MOST_OFF_SKY : MOST_OFF);
        boolean pure = pure(off, allowed);
        skyLevels += ofSky ? 1 : 0;
        skyPure += ofSky && pure ? 1 : 0;
        if (pure) {
            double[] sums = new double[3];
            for (int i = from; i < to; i++) {
                if (off[i - from] <= 2 * allowed) {
                    sums[0] += pixels.origin()[i];
                    sums[1] += pixels.picture()[i];
                    sums[2]++;
                }
            }
            points.add(new double[] {sums[0] / sums[2], sums[1] / sums[2]});
        }
    }

    private boolean pure(double[] off, double allowed) {
        boolean steps = quantum > 0 && off.length >= THIN;
        return off.length >= FEWEST_PIXELS && (steps ? others(off, allowed) < FEW : lower(off) <= allowed);
    }

    /** Mean of the lower ones. */
    private static double lower(double[] off) {
        double[] sorted = off.clone();
        Arrays.sort(sorted);
        int count = Math.max(1, (int) ((1 - OTHERS) * sorted.length));
        return Arrays.stream(sorted, 0, count).sum() / count;
    }

    /** Share of pixels that are not as their neighbours in level are. */
    private static double others(double[] off, double allowed) {
        return Arrays.stream(off).filter(o -> o > allowed).count() / (double) off.length;
    }

    /** How far a pixel of the picture lies off the middle one of those about it in the origin's order. */
    private double off(int i) {
        float[] p = pixels.picture();
        int from = Math.max(0, Math.min(p.length - 2 * ABOUT - 1, i - ABOUT));
        float[] about = Arrays.copyOfRange(p, from, Math.min(p.length, from + 2 * ABOUT + 1));
        Arrays.sort(about);
        return Math.abs(p[i] - about[about.length / 2]);
    }
}
