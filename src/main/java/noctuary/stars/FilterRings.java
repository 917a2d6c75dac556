package noctuary.stars;

import java.util.Arrays;

/**
 * Pixels of a tile and their matched-filter response, row after row in rings of rows that stay in the processor's
 * cache. A row's response is ready once as many pixel rows below it are read as the filter's square reaches. For one
 * thread.
 */
final class FilterRings {
    private static final int BLOCK = 32;

    private final MatchedFilter filter;
    private final SkyRows source;
    private final BlockMap ceilings;
    private final int square;
    private final int halo;
    private final int margin;
    private final int ring;
    private final int stride;
    private final int count;
    private final float[] pixels;
    private final float[] smooth;
    private final float[] means;
    private final float[] response;
    private final float[] sum;
    private final float[] clipped;
    private int x0;
    private int y0;
    private int width;
    private int summed;

    FilterRings(SkyRows source, MatchedFilter filter, int widest) {
        this.filter = filter;
        this.source = source;
        this.ceilings = new BlockMap(BLOCK, source::ceilingAt);
        this.square = filter.square();
        this.halo = filter.aside() + 1;
        this.margin = square + halo;
        this.ring = Integer.highestOneBit(2 * square + halo + 4) * 2;
        this.stride = widest + 2 * margin;
        this.count = widest + 2 * halo;
        this.pixels = new float[ring * stride];
        this.smooth = new float[ring * count];
        this.means = new float[ring * count];
        this.response = new float[ring * count];
        this.sum = new float[count];
        this.clipped = new float[stride];
    }

    /** Starts a tile whose first pixel is (x, y); rows and columns are counted from there. */
    void begin(int x, int y, int tileWidth) {
        x0 = x;
        y0 = y;
        width = tileWidth;
        summed = 0;
        Arrays.fill(sum, 0);
    }

    /** Rows and columns that must be read around the tile. */
    int margin() {
        return margin;
    }

    /** Columns and rows around the tile for which there is a response. */
    int halo() {
        return halo;
    }

    /** Reads one more row of pixels; returns the row whose response became ready, if not below -halo. */
    int read(int row) {
        readRow(row);
        addMeans(row);
        int ready = row - square;
        if (ready >= -halo) {
            respond(ready);
        }
        return ready;
    }

    /** Columns from {@code from} to {@code to} of row y where the response is above a threshold; returns how many. */
    int above(float threshold, int from, int to, int y, int[] into) {
        int at = indexOf(y);
        int found = 0;
        for (int x = from; x < to; x++) {
            if (response[at + x] > threshold) {
                into[found++] = x;
            }
        }
        return found;
    }

    /** Whether no neighbour responds more; of equal ones the first is the peak. */
    boolean isPeak(int x, int y) {
        float v = responseAt(x, y);
        return v > responseAt(x - 1, y)
                && v >= responseAt(x + 1, y)
                && v > responseAt(x - 1, y - 1)
                && v > responseAt(x, y - 1)
                && v > responseAt(x + 1, y - 1)
                && v >= responseAt(x - 1, y + 1)
                && v >= responseAt(x, y + 1)
                && v >= responseAt(x + 1, y + 1);
    }

    /** Whether the response bulges here, in each of four directions: on peaks, and where one hides in a slope. */
    boolean bulges(int x, int y) {
        float twice = 2 * responseAt(x, y);
        return twice > responseAt(x - 1, y) + responseAt(x + 1, y)
                && twice > responseAt(x, y - 1) + responseAt(x, y + 1)
                && twice > responseAt(x - 1, y - 1) + responseAt(x + 1, y + 1)
                && twice > responseAt(x + 1, y - 1) + responseAt(x - 1, y + 1);
    }

    private int indexOf(int row) {
        return slot(row) * count + halo;
    }

    float responseAt(int x, int y) {
        return response[indexOf(y) + x];
    }

    /** Height of the parabolas through a peak and its neighbours. */
    double vertex(int x, int y) {
        double top = responseAt(x, y);
        return top
                + rise(responseAt(x - 1, y), top, responseAt(x + 1, y))
                + rise(responseAt(x, y - 1), top, responseAt(x, y + 1));
    }

    private static double rise(double before, double top, double after) {
        double curvature = 2 * top - before - after;
        return curvature > 0 ? (after - before) * (after - before) / (8 * curvature) : 0;
    }

    /** A pixel less the pedestal. */
    float pixelAt(int x, int y) {
        return pixels[slot(y) * stride + margin + x];
    }

    /** Mean of the square around a pixel, less the pedestal. */
    double around(int x, int y) {
        double total = 0;
        int rows = 0;
        for (int row = y - square; row <= y + square; row++) {
            if (even(row)) {
                total += means[slot(row) * count + halo + x];
                rows++;
            }
        }
        return total / rows;
    }

    private int slot(int row) {
        return row & (ring - 1);
    }

    private void readRow(int row) {
        int at = slot(row) * stride;
        int length = width + 2 * margin;
        source.read(x0 - margin, y0 + row, length, pixels, at);
        int to = slot(row) * count;
        filter.along(pixels, at + square, smooth, to, width + 2 * halo);
        if (even(row)) {
            clip(row, at, length);
            filter.meanAlong(clipped, square, means, to, width + 2 * halo);
        }
    }

    /** The mean is slow enough to be taken from every second row. */
    private static boolean even(int row) {
        return (row & 1) == 0;
    }

    /** Keeps neighbours from lifting the mean around faint stars; where the sky has structure nothing is cut. */
    private void clip(int row, int at, int length) {
        int left = x0 - margin;
        for (int i = 0, to; i < length; i = to) {
            to = Math.min(length, ceilings.end(left + i) - left);
            float top = ceilings.at(left + i, y0 + row);
            for (int k = i; k < to; k++) {
                float v = pixels[at + k];
                clipped[k] = v < top ? v : top;
            }
        }
    }

    /** Keeps {@link #sum} the sum of the even rows of means within the height of the square. */
    private void addMeans(int row) {
        int n = width + 2 * halo;
        if (even(row)) {
            add(sum, means, slot(row) * count, n, 1);
            summed++;
        }
        int gone = row - 2 * square - 1;
        if (gone >= -margin && even(gone)) {
            add(sum, means, slot(gone) * count, n, -1);
            summed--;
        }
    }

    private static void add(float[] sum, float[] from, int at, int n, float sign) {
        for (int i = 0; i < n; i++) {
            sum[i] += sign * from[at + i];
        }
    }

    private void respond(int row) {
        int out = slot(row) * count;
        int n = width + 2 * halo;
        float[] taps = filter.taps();
        respondFromNear(row, out, n, taps);
        for (int k = 3; k + 1 < taps.length; k += 2) {
            MatchedFilter.addTwo(
                    smooth,
                    slot(row - k) * count,
                    slot(row + k) * count,
                    taps[k],
                    slot(row - k - 1) * count,
                    slot(row + k + 1) * count,
                    taps[k + 1],
                    response,
                    out,
                    n);
        }
        if (taps.length % 2 == 0 && taps.length > 2) {
            int k = taps.length - 1;
            MatchedFilter.addOne(smooth, slot(row - k) * count, slot(row + k) * count, taps[k], response, out, n);
        }
    }

    /** The mean and the five middle rows in one pass over memory. */
    private void respondFromNear(int row, int out, int n, float[] taps) {
        int centre = slot(row) * count;
        int a = slot(row - 1) * count;
        int b = slot(row + 1) * count;
        int c = slot(row - 2) * count;
        int d = slot(row + 2) * count;
        float scale = 1f / summed;
        float first = taps[0];
        float tap = taps[1];
        float next = taps.length > 2 ? taps[2] : 0;
        for (int i = 0; i < n; i++) {
            response[out + i] = first * smooth[centre + i]
                    - scale * sum[i]
                    + tap * (smooth[a + i] + smooth[b + i])
                    + next * (smooth[c + i] + smooth[d + i]);
        }
    }
}
