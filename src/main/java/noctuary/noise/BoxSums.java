package noctuary.noise;

/** Sums over squares of a tile, as far as they lie in it, as sums that run with the square. For one thread. */
final class BoxSums {
    private final int width;
    private final int height;
    private final int stride;
    private final int widest;
    /** From one row of {@link #columns} to the next: the width and room for squares that stand out on both sides. */
    private final int pitch;
    /** Sums down the columns; zeros on both sides. */
    private final float[] columns;

    /**
     * @param stride from one row of a tile to the next in its array
     * @param widest reach that will be asked for
     */
    BoxSums(int width, int height, int stride, int widest) {
        this.width = width;
        this.height = height;
        this.stride = stride;
        this.widest = widest;
        this.pitch = width + 2 * widest + 1;
        this.columns = new float[height * pitch];
    }

    /** Fills {@code into} with the sums over squares of side 2 {@code reach} + 1 about each pixel. */
    void sum(float[] values, int reach, float[] into) {
        sumColumns(values, reach);
        int last = height - 1;
        for (int y = 0; y < height; y += 4) {
            sumRows(y, Math.min(last, y + 1), Math.min(last, y + 2), Math.min(last, y + 3), reach, into);
        }
    }

    private void sumColumns(float[] values, int reach) {
        float[] sum = new float[width];
        for (int y = 0; y < Math.min(height, reach); y++) {
            add(values, y * stride, sum);
        }
        for (int y = 0; y < height; y++) {
            if (y + reach < height) {
                add(values, (y + reach) * stride, sum);
            }
            if (y - reach - 1 >= 0) {
                subtract(values, (y - reach - 1) * stride, sum);
            }
            System.arraycopy(sum, 0, columns, y * pitch + widest + 1, width);
        }
    }

    /** Four rows side by side, since each sum must wait for the one before it. */
    private void sumRows(int first, int second, int third, int fourth, int reach, float[] into) {
        int leaves = widest - reach;
        int enters = leaves + 2 * reach + 1;
        float a = before(first, leaves, enters);
        float b = before(second, leaves, enters);
        float c = before(third, leaves, enters);
        float d = before(fourth, leaves, enters);
        for (int x = 0; x < width; x++) {
            a += columns[first * pitch + enters + x] - columns[first * pitch + leaves + x];
            b += columns[second * pitch + enters + x] - columns[second * pitch + leaves + x];
            c += columns[third * pitch + enters + x] - columns[third * pitch + leaves + x];
            d += columns[fourth * pitch + enters + x] - columns[fourth * pitch + leaves + x];
            into[first * stride + x] = a;
            into[second * stride + x] = b;
            into[third * stride + x] = c;
            into[fourth * stride + x] = d;
        }
    }

    /** The sum about the place left of the first. */
    private float before(int row, int from, int to) {
        float sum = 0;
        for (int i = row * pitch + from; i < row * pitch + to; i++) {
            sum += columns[i];
        }
        return sum;
    }

    private static void add(float[] from, int start, float[] sum) {
        for (int x = 0; x < sum.length; x++) {
            sum[x] += from[start + x];
        }
    }

    private static void subtract(float[] from, int start, float[] sum) {
        for (int x = 0; x < sum.length; x++) {
            sum[x] -= from[start + x];
        }
    }
}
