package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import noctuary.stats.Robust;

/**
 * Pixels of both pictures, in order of the origin: all bright ones and some of the others, but those at black or white.
 *
 * @param origin rising
 * @param picture of the same pixels, shares of white
 * @param skyShown share of the sky's pixels that is neither black nor white
 */
record PixelPairs(float[] origin, float[] picture, double skyShown, double sky, double noise) {
    private static final int MOST_PIXELS = 400_000;
    private static final double BRIGHT_SIGMAS = 8;
    private static final double SKY_SIGMAS = 2.5;
    /** Fewer values than this are steps. */
    private static final int FEW_VALUES = 4096;

    private static final float SAME = 1e-6f;
    /** Puts pixels of one level in an order that has nothing to do with the picture, and its inverse modulo 2³². */
    private static final int SCATTER = 0x9E3779B1;

    private static final int GATHER = 0xE8B2F51;

    static PixelPairs of(List<Tile> tiles, double sky, double noise) {
        long all = tiles.stream().mapToLong(Tile::size).sum();
        int stride = (int) Math.max(1, all / MOST_PIXELS);
        float[] shown = new float[(int) all];
        long[] keys = new long[(int) all];
        int count = 0;
        long skyPixels = 0;
        long skyShown = 0;
        for (Tile tile : tiles) {
            for (int i = 0; i < tile.size(); i++) {
                float x = tile.origin()[i];
                float p = tile.picture()[i];
                boolean seen = p > 0 && p < 1;
                boolean ofSky = ofSky(x, sky, noise);
                skyPixels += ofSky ? 1 : 0;
                skyShown += ofSky && seen ? 1 : 0;
                if (seen && (i % stride == 0 || x > sky + BRIGHT_SIGMAS * noise) && !Float.isNaN(x)) {
                    shown[count] = p;
                    keys[count] = (long) turned(Float.floatToIntBits(x)) << 32 | count * SCATTER & 0xFFFFFFFFL;
                    count++;
                }
            }
        }
        long[] sorted = Arrays.copyOf(keys, count);
        Arrays.sort(sorted);
        return parts(sorted, shown, skyShown / (double) skyPixels, sky, noise);
    }

    /** A float's bits, turned so that they order as the numbers do, and back. */
    private static int turned(int bits) {
        return bits ^ (bits >> 31 & Integer.MAX_VALUE);
    }

    private static PixelPairs parts(long[] keys, float[] shown, double skyShown, double sky, double noise) {
        float[] origin = new float[keys.length];
        float[] picture = new float[keys.length];
        for (int i = 0; i < keys.length; i++) {
            origin[i] = Float.intBitsToFloat(turned((int) (keys[i] >> 32)));
            picture[i] = shown[(int) keys[i] * GATHER];
        }
        return new PixelPairs(origin, picture, skyShown, sky, noise);
    }

    private static boolean ofSky(double x, double sky, double noise) {
        return Math.abs(x - sky) < SKY_SIGMAS * noise;
    }

    boolean ofSky(int i) {
        return ofSky(origin[i], sky, noise);
    }

    /** Noise of the picture about the sky. */
    double shownNoise() {
        double[] shown = new double[origin.length];
        int count = 0;
        for (int i = 0; i < origin.length; i++) {
            if (ofSky(i)) {
                shown[count++] = picture[i];
            }
        }
        return count == 0 ? 0 : Robust.sigma(Arrays.copyOf(shown, count));
    }

    /** The step between values of the picture where there are few of them, as of eight bits; 0 where there are many. */
    double quantum() {
        float[] sorted = picture.clone();
        Arrays.sort(sorted);
        int distinct = 1;
        for (int i = 1; i < sorted.length; i++) {
            distinct += sorted[i] - sorted[i - 1] > SAME ? 1 : 0;
        }
        return distinct < FEW_VALUES && sorted.length > FEW_VALUES
                ? (sorted[sorted.length - 1] - sorted[0]) / distinct
                : 0;
    }
}
