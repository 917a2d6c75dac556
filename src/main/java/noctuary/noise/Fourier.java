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

    /** Both axes; rows and columns end up exchanged. */
    void transform(float[] re, float[] im) {
        down(re, im);
        transpose(re);
        transpose(im);
        down(re, im);
    }

    /** All columns at once: every butterfly is between two whole rows. */
    private void down(float[] re, float[] im) {
        order(re);
        order(im);
        for (int half = 1; half < side; half *= 2) {
            int step = side / (2 * half);
            for (int start = 0; start < side; start += 2 * half) {
                for (int k = 0; k < half; k++) {
                    butterflies(re, im, (start + k) * side, (start + k + half) * side, cos[k * step], sin[k * step]);
                }
            }
        }
    }

    private void order(float[] values) {
        float[] swap = new float[side];
        for (int i = 0; i < side; i++) {
            int j = reversed[i];
            if (j > i) {
                System.arraycopy(values, i * side, swap, 0, side);
                System.arraycopy(values, j * side, values, i * side, side);
                System.arraycopy(swap, 0, values, j * side, side);
            }
        }
    }

    private void butterflies(float[] re, float[] im, int upper, int lower, float c, float s) {
        for (int i = 0; i < side; i++) {
            float x = re[lower + i];
            float y = im[lower + i];
            float tr = x * c - y * s;
            float ti = x * s + y * c;
            re[lower + i] = re[upper + i] - tr;
            im[lower + i] = im[upper + i] - ti;
            re[upper + i] += tr;
            im[upper + i] += ti;
        }
    }

    private void transpose(float[] values) {
        for (int y = 0; y < side; y++) {
            for (int x = y + 1; x < side; x++) {
                float swap = values[y * side + x];
                values[y * side + x] = values[x * side + y];
                values[x * side + y] = swap;
            }
        }
    }
}
