package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.image.Asinh;
import noctuary.stats.Robust;

/**
 * The curve that single pixels follow, where they do: at some levels, or at all, most pixels of the picture are one
 * function of those of the origin, as under a stretch alone, or under a step that left them as they were.
 */
final class PixelCurve {
    private static final int MOST_PIXELS = 400_000;
    private static final double BRIGHT_SIGMAS = 8;
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
    /** Fewer values than this are steps. */
    private static final int FEW_VALUES = 4096;

    /** Puts pixels of one level in an order that has nothing to do with the picture, and its inverse modulo 2³². */
    private static final int SCATTER = 0x9E3779B1;

    private static final int GATHER = 0xE8B2F51;
    private static final float SAME = 1e-6f;
    private static final int THIN = 200;
    private static final double FEW = 0.05;
    private static final double SKY_SIGMAS = 2.5;
    private static final double MOST_OF_SKY = 0.9;

    private final double sky;
    private final double noise;
    private final List<double[]> points = new ArrayList<>();
    private double quantum;
    private double seen;
    private long skyPixels;
    private long skyShown;
    private int skyLevels;
    private int skyPure;

    /** @param noise of a pixel of the origin about the sky */
    private PixelCurve(double sky, double noise) {
        this.sky = sky;
        this.noise = noise;
    }

    static PixelCurve of(List<Tile> tiles, double sky, double noise) {
        PixelCurve curve = new PixelCurve(sky, noise);
        float[][] sorted = curve.sorted(tiles);
        curve.look(sorted[0], sorted[1]);
        return curve;
    }

    /** Whether the sky follows a curve, so that nothing but a stretch befell it. */
    boolean skyIsPure() {
        return skyLevels > 0
                && skyPure >= MOST_OF_SKY * skyLevels
                && skyShown >= LEAST_SHOWN * skyPixels
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

    /** Origin and picture, both in order of the origin: all bright pixels and some of the others. */
    private float[][] sorted(List<Tile> tiles) {
        long all = tiles.stream().mapToLong(Tile::size).sum();
        int stride = (int) Math.max(1, all / MOST_PIXELS);
        double bright = sky + BRIGHT_SIGMAS * noise;
        float[] shown = new float[(int) all];
        long[] keys = new long[(int) all];
        int count = 0;
        for (Tile tile : tiles) {
            for (int i = 0; i < tile.size(); i++) {
                float x = tile.origin()[i];
                float p = tile.picture()[i];
                boolean ofSky = ofSky(x);
                skyPixels += ofSky ? 1 : 0;
                skyShown += ofSky && p > 0 && p < 1 ? 1 : 0;
                if ((i % stride == 0 || x > bright) && p > 0 && p < 1 && !Float.isNaN(x)) {
                    shown[count] = p;
                    keys[count] = (long) turned(Float.floatToIntBits(x)) << 32 | count * SCATTER & 0xFFFFFFFFL;
                    count++;
                }
            }
        }
        long[] sorted = Arrays.copyOf(keys, count);
        Arrays.sort(sorted);
        return parts(sorted, shown);
    }

    /** A float's bits, turned so that they order as the numbers do, and back. */
    private static int turned(int bits) {
        return bits ^ (bits >> 31 & Integer.MAX_VALUE);
    }

    private static float[][] parts(long[] keys, float[] shown) {
        float[][] parts = new float[2][keys.length];
        for (int i = 0; i < keys.length; i++) {
            parts[0][i] = Float.intBitsToFloat(turned((int) (keys[i] >> 32)));
            parts[1][i] = shown[(int) keys[i] * GATHER];
        }
        return parts;
    }

    private void look(float[] x, float[] p) {
        seen = seen(x, p);
        quantum = quantum(p);
        int from = 0;
        while (from < x.length) {
            int to = from + 1;
            double end = u(x[from]) + WIDTH;
            while (to < x.length && (to - from < FEWEST_PIXELS || u(x[to]) < end)) {
                to++;
            }
            add(x, p, from, to);
            from = to;
        }
    }

    private double u(double x) {
        return Asinh.asinh((x - sky) / noise);
    }

    private boolean ofSky(double x) {
        return Math.abs(x - sky) < SKY_SIGMAS * noise;
    }

    /** Noise of the picture about the sky. */
    private double seen(float[] x, float[] p) {
        double[] shown = new double[x.length];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            if (ofSky(x[i])) {
                shown[count++] = p[i];
            }
        }
        return count == 0 ? 0 : Robust.sigma(Arrays.copyOf(shown, count));
    }

    private void add(float[] x, float[] p, int from, int to) {
        double[] off = IntStream.range(from, to).mapToDouble(i -> off(p, i)).toArray();
        boolean thin = off.length < THIN;
        boolean ofSky = ofSky(x[(from + to) / 2]);
        double allowed = quantum > 0 ? quantum / 2 : seen * (ofSky ? MOST_OFF_SKY : MOST_OFF);
        boolean pure = off.length >= FEWEST_PIXELS
                && (quantum > 0 && !thin ? others(off, allowed) < FEW : lower(off) <= allowed);
        skyLevels += ofSky ? 1 : 0;
        skyPure += ofSky && pure ? 1 : 0;
        if (pure) {
            double[] sums = new double[3];
            for (int i = from; i < to; i++) {
                if (off[i - from] <= 2 * allowed) {
                    sums[0] += x[i];
                    sums[1] += p[i];
                    sums[2]++;
                }
            }
            points.add(new double[] {sums[0] / sums[2], sums[1] / sums[2]});
        }
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

    /** The step between values where there are few of them, as of eight bits; 0 where there are many. */
    private static double quantum(float[] p) {
        float[] sorted = p.clone();
        Arrays.sort(sorted);
        int distinct = 1;
        for (int i = 1; i < sorted.length; i++) {
            distinct += sorted[i] - sorted[i - 1] > SAME ? 1 : 0;
        }
        return distinct < FEW_VALUES && sorted.length > FEW_VALUES
                ? (sorted[sorted.length - 1] - sorted[0]) / distinct
                : 0;
    }

    /** How far a pixel of the picture lies off the middle one of those about it in the origin's order. */
    private static double off(float[] p, int i) {
        int from = Math.max(0, Math.min(p.length - 2 * ABOUT - 1, i - ABOUT));
        float[] about = Arrays.copyOfRange(p, from, Math.min(p.length, from + 2 * ABOUT + 1));
        Arrays.sort(about);
        return Math.abs(p[i] - about[about.length / 2]);
    }
}
