package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    /** Most that pixels may be off the line between those next to them in level, in noise of the picture. */
    private static final double MOST_OFF = 0.01;
    /** Share of the pixels of a level that need not follow. */
    private static final double OTHERS = 0.4;
    /** What steps of eight bits put pixels off where levels are thinly filled, as a share of white. */
    private static final double EIGHT_BITS = 0.002;

    private static final int THIN = 200;
    private static final double SKY_SIGMAS = 2.5;
    private static final double MOST_OF_SKY = 0.9;

    private final double sky;
    private final double noise;
    private final List<double[]> points = new ArrayList<>();
    private boolean steps;
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
        return skyLevels > 0 && skyPure >= MOST_OF_SKY * skyLevels;
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
        List<long[]> kept = new ArrayList<>();
        int total = 0;
        for (Tile tile : tiles) {
            long[] keys = new long[tile.size()];
            int count = 0;
            for (int i = 0; i < keys.length; i++) {
                float x = tile.origin()[i];
                float p = tile.picture()[i];
                if ((i % stride == 0 || x > bright) && p > 0 && p < 1 && !Float.isNaN(x)) {
                    keys[count++] = key(x, p);
                }
            }
            kept.add(Arrays.copyOf(keys, count));
            total += count;
        }
        return parts(kept.stream().flatMapToLong(Arrays::stream).sorted().toArray(), total);
    }

    /** The origin's bits, turned so that they order as the numbers do, before the picture's. */
    private static long key(float x, float p) {
        return ((long) turned(Float.floatToIntBits(x)) << 32) | Float.floatToIntBits(p);
    }

    private static int turned(int bits) {
        return bits ^ (bits >> 31 & Integer.MAX_VALUE);
    }

    private static float[][] parts(long[] keys, int total) {
        float[][] parts = new float[2][total];
        for (int i = 0; i < total; i++) {
            parts[0][i] = Float.intBitsToFloat(turned((int) (keys[i] >> 32)));
            parts[1][i] = Float.intBitsToFloat((int) keys[i]);
        }
        return parts;
    }

    private void look(float[] x, float[] p) {
        double most = mostOff(x, p);
        steps = eightBits(p);
        int from = 0;
        while (from < x.length) {
            int to = from + 1;
            double end = u(x[from]) + WIDTH;
            while (to < x.length && (to - from < FEWEST_PIXELS || u(x[to]) < end)) {
                to++;
            }
            add(x, p, from, to, most);
            from = to;
        }
    }

    private double u(double x) {
        return Asinh.asinh((x - sky) / noise);
    }

    private double mostOff(float[] x, float[] p) {
        double[] shown = new double[x.length];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            if (Math.abs(x[i] - sky) < SKY_SIGMAS * noise) {
                shown[count++] = p[i];
            }
        }
        double seen = count == 0 ? 0 : Robust.sigma(Arrays.copyOf(shown, count));
        return MOST_OFF * seen;
    }

    private void add(float[] x, float[] p, int from, int to, double most) {
        double[] off = new double[Math.max(0, to - from - 2)];
        for (int i = from + 1; i < to - 1; i++) {
            off[i - from - 1] = Math.abs(off(x, p, i));
        }
        double allowed = steps && off.length < THIN ? Math.max(EIGHT_BITS, most) : most;
        boolean pure = off.length >= FEWEST_PIXELS - 2 && lower(off) <= allowed;
        boolean ofSky = Math.abs(x[(from + to) / 2] - sky) < SKY_SIGMAS * noise;
        skyLevels += ofSky ? 1 : 0;
        skyPure += ofSky && pure ? 1 : 0;
        if (pure) {
            double[] sums = new double[3];
            for (int i = from + 1; i < to - 1; i++) {
                if (off[i - from - 1] <= Math.max(EIGHT_BITS, allowed)) {
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

    private static boolean eightBits(float[] p) {
        for (float v : p) {
            if (Math.abs(255 * v - Math.rint(255 * v)) > 1e-3) {
                return false;
            }
        }
        return true;
    }

    /** How far a pixel of the picture lies off the line between its neighbours in the origin's order. */
    private static double off(float[] x, float[] p, int i) {
        double gap = x[i + 1] - x[i - 1];
        double part = gap > 0 ? (x[i] - x[i - 1]) / gap : 0.5;
        return p[i] - p[i - 1] - part * (p[i + 1] - p[i - 1]);
    }
}
