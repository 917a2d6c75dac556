package noctuary.noise;

/** Fast Fourier transform of square complex tiles whose side is a power of two (radix 2, in place, unscaled). */
final class Fourier {
    private final int side;
    private final float[] cos;
    private final float[] sin;
    private final int[] reversed;

    Fourier(int side) {
        if (Integer.bitCount(side) != 1) {
            throw new IllegalArgumentException(side + " is no power of two");
        }
        this.side = side;
        this.cos = new float[side / 2];
        this.sin = new float[side / 2];
        this.reversed = new int[side];
        for (int i = 0; i < side / 2; i++) {
            cos[i] = (float) Math.cos(2 * Math.PI * i / side);
            sin[i] = (float) -Math.sin(2 * Math.PI * i / side);
        }
        for (int i = 1; i < side; i++) {
            reversed[i] = reversed[i >> 1] >> 1 | ((i & 1) == 0 ? 0 : side >> 1);
        }
    }

    /** Both axes. */
    void transform(float[] re, float[] im) {
        float[][] reRows = new float[side][side];
        float[][] imRows = new float[side][side];
        for (int axis = 0; axis < 2; axis++) {
            order(re, reRows);
            order(im, imRows);
            down(reRows, imRows);
            transpose(reRows, re);
            transpose(imRows, im);
        }
    }

    private void order(float[] values, float[][] rows) {
        for (int i = 0; i < side; i++) {
            System.arraycopy(values, reversed[i] * side, rows[i], 0, side);
        }
    }

    /** All columns at once: every butterfly is between two whole rows. */
    private void down(float[][] re, float[][] im) {
        for (int half = 1; half < side; half *= 2) {
            int step = side / (2 * half);
            for (int start = 0; start < side; start += 2 * half) {
                for (int k = start; k < start + half; k++) {
                    int turn = (k - start) * step;
                    butterflies(re[k], im[k], re[k + half], im[k + half], cos[turn], sin[turn]);
                }
            }
        }
    }

    private static void butterflies(float[] re, float[] im, float[] lowerRe, float[] lowerIm, float c, float s) {
        for (int i = 0; i < re.length; i++) {
            float a = re[i];
            float b = im[i];
            float x = lowerRe[i] * c - lowerIm[i] * s;
            float y = lowerRe[i] * s + lowerIm[i] * c;
            re[i] = a + x;
            im[i] = b + y;
            lowerRe[i] = a - x;
            lowerIm[i] = b - y;
        }
    }

    private void transpose(float[][] rows, float[] into) {
        for (int x = 0; x < side; x++) {
            for (int y = 0; y < side; y++) {
                into[x * side + y] = rows[y][x];
            }
        }
    }
}
