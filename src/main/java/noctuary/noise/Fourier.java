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
        rows(re, im);
        transpose(re);
        transpose(im);
        rows(re, im);
    }

    private void rows(float[] re, float[] im) {
        for (int from = 0; from < re.length; from += side) {
            order(re, from);
            order(im, from);
            for (int half = 1; half < side; half *= 2) {
                butterflies(re, im, from, half);
            }
        }
    }

    private void order(float[] values, int from) {
        for (int i = 0; i < side; i++) {
            int j = reversed[i];
            if (j > i) {
                float swap = values[from + i];
                values[from + i] = values[from + j];
                values[from + j] = swap;
            }
        }
    }

    private void butterflies(float[] re, float[] im, int from, int half) {
        int step = side / (2 * half);
        for (int start = from; start < from + side; start += 2 * half) {
            for (int k = 0; k < half; k++) {
                int a = start + k;
                int b = a + half;
                float c = cos[k * step];
                float s = sin[k * step];
                float tr = re[b] * c - im[b] * s;
                float ti = re[b] * s + im[b] * c;
                re[b] = re[a] - tr;
                im[b] = im[a] - ti;
                re[a] += tr;
                im[a] += ti;
            }
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
