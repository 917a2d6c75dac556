package noctuary.fits;

import java.util.Arrays;

/**
 * How the axes of an image become planes.
 *
 * @param planes 1 or 3
 * @param interleaved true when the colour axis comes first, so that a pixel's three values stand together
 * @param partial true when only the first plane of a cube is taken
 */
record Shape(int width, int height, int planes, boolean interleaved, boolean partial) {
    private static final int COLOURS = 3;
    /** Some JVMs cannot allocate the last few elements of the largest array. */
    private static final long MOST_PIXELS = Integer.MAX_VALUE - 8L;

    static Shape of(long[] axes) throws UnreadableException {
        long[] used = withoutTrailingOnes(axes);
        boolean last = used.length == 3 && used[2] == COLOURS;
        boolean first = used.length == 3 && used[0] == COLOURS && !last;
        int x = first ? 1 : 0;
        long pixels = Math.multiplyHigh(used[x], used[x + 1]) != 0 ? Long.MAX_VALUE : used[x] * used[x + 1];
        if (pixels > MOST_PIXELS || pixels < 0) {
            throw new UnreadableException(
                    "claims " + used[x] + " x " + used[x + 1] + " pixels, more than can be held",
                    "images up to 2147 megapixels are read");
        }
        boolean partial = used.length > 2 && !first && !last;
        return new Shape((int) used[x], (int) used[x + 1], first || last ? COLOURS : 1, first, partial);
    }

    private static long[] withoutTrailingOnes(long[] axes) {
        int length = axes.length;
        while (length > 2 && axes[length - 1] == 1) {
            length--;
        }
        return Arrays.copyOf(axes, length);
    }

    int planePixels() {
        return width * height;
    }

    /** Values to read, of all planes that are taken. */
    long values() {
        return (long) planePixels() * planes;
    }
}
