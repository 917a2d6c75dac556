package noctuary.stars;

/**
 * A detection kernel of zero mean: a Gaussian of about the width of a star less the mean of a square around it, so
 * that sky, gradients and broad nebulae drop out without being modelled.
 *
 * @param taps of the Gaussian from the centre outwards, adding to 1 over both sides
 * @param square half side of the square, pixels
 * @param norm noise of the response on white noise of 1 a pixel
 */
record MatchedFilter(double fwhm, float[] taps, int square, double norm) {
    /** The kernel for stars that show a width of {@code fwhm} pixels. */
    static MatchedFilter of(double fwhm, Sampling sampling) {
        double sigma = Math.max(1.2, fwhm) / 2.3548200450309493;
        int reach = Math.max(1, (int) Math.round(2.8 * sigma));
        double[] taps = new double[reach + 1];
        double sum = 0;
        for (int i = 0; i <= reach; i++) {
            taps[i] = Math.exp(-0.5 * i * i / (sigma * sigma));
            sum += (i == 0 ? 1 : 2) * taps[i];
        }
        float[] scaled = new float[reach + 1];
        for (int i = 0; i <= reach; i++) {
            scaled[i] = (float) (taps[i] / sum);
        }
        int square = Math.max(reach + 1, (int) Math.round(2.2 * fwhm + 1));
        return new MatchedFilter(fwhm, scaled, square, norm(scaled, square, sampling));
    }

    /** The mean is taken from half the rows. In a mosaic a pixel that does not count passes a quarter of its kernel value on to each neighbour. */
    private static double norm(float[] taps, int square, Sampling sampling) {
        int side = 2 * square + 1;
        double sum = (side / (square + 0.5) - 1) / (side * side);
        for (int y = -square - 1; y <= square + 1; y++) {
            for (int x = -square - 1; x <= square + 1; x++) {
                double k = kernel(taps, square, x, y);
                if (sampling.all()) {
                    sum += k * k;
                } else {
                    k += 0.25
                            * (kernel(taps, square, x - 1, y)
                                    + kernel(taps, square, x + 1, y)
                                    + kernel(taps, square, x, y - 1)
                                    + kernel(taps, square, x, y + 1));
                    sum += k * k / 2;
                }
            }
        }
        return Math.sqrt(sum);
    }

    private static double kernel(float[] taps, int square, int x, int y) {
        if (Math.max(Math.abs(x), Math.abs(y)) > square) {
            return 0;
        }
        return tap(taps, x) * tap(taps, y) - 1.0 / ((2 * square + 1) * (2 * square + 1));
    }

    private static double tap(float[] taps, int i) {
        int a = Math.abs(i);
        return a < taps.length ? taps[a] : 0;
    }

    /** Distance at which a star's response has fallen off and a ridge's has not, pixels. */
    int aside() {
        return Math.max(2, (int) Math.round(1.2 * fwhm));
    }

    /** Response to a star of unit flux in the middle of a pixel. */
    double response(MoffatModel star) {
        double sum = 0;
        for (int y = -square; y <= square; y++) {
            for (int x = -square; x <= square; x++) {
                sum += star.value(x, y) * kernel(taps, square, x, y);
            }
        }
        return sum;
    }

    /** Gaussian along a row: {@code count} values from {@code from} on into {@code out} at {@code to}. */
    void along(float[] in, int from, float[] out, int to, int count) {
        if (taps.length > 2) {
            float centre = taps[0];
            float tap = taps[1];
            float next = taps[2];
            for (int i = 0; i < count; i++) {
                out[to + i] = centre * in[from + i]
                        + tap * (in[from - 1 + i] + in[from + 1 + i])
                        + next * (in[from - 2 + i] + in[from + 2 + i]);
            }
        } else {
            scale(in, from, taps[0], out, to, count);
        }
        for (int k = taps.length > 2 ? 3 : 1; k + 1 < taps.length; k += 2) {
            addTwo(in, from - k, from + k, taps[k], from - k - 1, from + k + 1, taps[k + 1], out, to, count);
        }
        if (taps.length % 2 == 0) {
            int k = taps.length - 1;
            addOne(in, from - k, from + k, taps[k], out, to, count);
        }
    }

    private static void scale(float[] in, int from, float factor, float[] out, int to, int count) {
        for (int i = 0; i < count; i++) {
            out[to + i] = factor * in[from + i];
        }
    }

    static void addOne(float[] in, int left, int right, float tap, float[] out, int to, int count) {
        for (int i = 0; i < count; i++) {
            out[to + i] += tap * (in[left + i] + in[right + i]);
        }
    }

    /** Two pairs of taps in one pass over memory. */
    static void addTwo(float[] in, int a, int b, float tap, int c, int d, float next, float[] out, int to, int count) {
        for (int i = 0; i < count; i++) {
            out[to + i] += tap * (in[a + i] + in[b + i]) + next * (in[c + i] + in[d + i]);
        }
    }

    /** Mean over the square's side along a row, as a sum that runs with it. */
    void meanAlong(float[] in, int from, float[] out, int to, int count) {
        int side = 2 * square + 1;
        double scale = 1.0 / side;
        double sum = 0;
        for (int i = from - square; i <= from + square; i++) {
            sum += in[i];
        }
        out[to] = (float) (scale * sum);
        for (int i = 1, enters = from + square + 1, leaves = from - square; i < count; i++) {
            sum += (double) in[enters++] - in[leaves++];
            out[to + i] = (float) (scale * sum);
        }
    }
}
