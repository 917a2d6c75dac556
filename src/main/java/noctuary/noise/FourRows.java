package noctuary.noise;

/** Sums over rows of values, four at a time, so that what they are added to is read and written once for four. */
final class FourRows {
    static final int ROWS = 4;

    private FourRows() {}

    /** The sum of squares down each column. */
    static void square(float[][] rows, float[] squares) {
        square(rows[0], rows[1], rows[2], rows[3], squares);
    }

    private static void square(float[] a, float[] b, float[] c, float[] d, float[] squares) {
        for (int x = 0; x < squares.length; x++) {
            squares[x] = a[x] * a[x] + b[x] * b[x] + c[x] * c[x] + d[x] * d[x];
        }
    }

    /** Adds to the sum down each column. */
    static void add(float[][] rows, float[] sums) {
        add(rows[0], rows[1], rows[2], rows[3], sums);
    }

    private static void add(float[] a, float[] b, float[] c, float[] d, float[] sums) {
        for (int x = 0; x < sums.length; x++) {
            sums[x] = sums[x] + a[x] + b[x] + c[x] + d[x];
        }
    }

    /** Along one row, in four sums that do not wait for each other. */
    static float sum(float[] values, int from, int to) {
        float a = 0;
        float b = 0;
        float c = 0;
        float d = 0;
        int x = from;
        for (; x + 3 < to; x += 4) {
            a += values[x];
            b += values[x + 1];
            c += values[x + 2];
            d += values[x + 3];
        }
        for (; x < to; x++) {
            a += values[x];
        }
        return a + b + (c + d);
    }
}
