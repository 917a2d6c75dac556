package noctuary.stars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import noctuary.image.Plane;

/**
 * Runs the matched filter down a tile of the plane, row by row in rings of rows that stay in the processor's cache, and
 * collects the peaks. Reused from tile to tile, by one thread.
 */
final class FilteredTile {
    private static final int BLOCK = 32;
    private static final double CEILING_SIGMAS = 4;

    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final PeakTest test;
    private final MatchedFilter filter;
    private final PixelRows source;
    private final BlockMap ceilings;
    private final BlockMap noises;
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
    private final float[] work;
    private final float[] spare;
    private int x0;
    private int y0;
    private int width;
    private int summed;

    FilteredTile(Plane plane, Sampling sampling, BackgroundMesh mesh, PeakTest test, int widest) {
        this.sampling = sampling;
        this.mesh = mesh;
        this.test = test;
        this.filter = test.filter();
        this.source = new PixelRows(plane, sampling, mesh);
        this.ceilings = new BlockMap(
                BLOCK,
                (x, y) -> mesh.roughnessAt(x, y) > 0
                        ? Float.MAX_VALUE
                        : mesh.levelAt(x, y) - mesh.level() + CEILING_SIGMAS * mesh.noiseAt(x, y));
        this.noises = new BlockMap(BLOCK, mesh::noiseAt);
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
        this.work = new float[stride];
        this.spare = new float[stride];
    }

    /** Peaks of the tile at (x, y), no wider than the widest. */
    List<Detection> search(int x, int y, int tileWidth, int tileHeight) {
        x0 = x;
        y0 = y;
        width = tileWidth;
        List<Detection> found = new ArrayList<>();
        Arrays.fill(sum, 0);
        summed = 0;
        for (int row = -margin; row < tileHeight + margin; row++) {
            readRow(row);
            addMeans(row);
            int ready = row - square;
            if (ready >= -halo) {
                respond(ready);
            }
            int scan = ready - halo;
            if (scan >= 0 && scan < tileHeight) {
                scan(scan, found);
            }
        }
        return found;
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
            filter.meanAlong(clipped, square, means, to, width + 2 * halo, work, spare);
        }
    }

    /** The mean is slow enough to be taken from every second row. */
    private static boolean even(int row) {
        return (row & 1) == 0;
    }

    /** Keeps neighbours from lifting the mean around faint stars; where the sky has structure nothing is cut. */
    private void clip(int row, int at, int length) {
        int y = y0 + row & -BLOCK;
        for (int i = 0; i < length; i += 2 * BLOCK) {
            int to = Math.min(length, i + 2 * BLOCK);
            float top = ceilings.at(x0 - margin + i, y);
            for (int k = i; k < to; k++) {
                clipped[k] = Math.min(top, pixels[at + k]);
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
        int centre = slot(row) * count;
        int n = width + 2 * halo;
        float[] taps = filter.taps();
        float scale = 1f / summed;
        float first = taps[0];
        for (int i = 0; i < n; i++) {
            response[out + i] = first * smooth[centre + i] - scale * sum[i];
        }
        for (int k = 1; k + 1 < taps.length; k += 2) {
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
        if (taps.length % 2 == 0) {
            int k = taps.length - 1;
            MatchedFilter.addOne(smooth, slot(row - k) * count, slot(row + k) * count, taps[k], response, out, n);
        }
    }

    private void scan(int y, List<Detection> found) {
        int at = slot(y) * count + halo;
        int up = slot(y - 1) * count + halo;
        int down = slot(y + 1) * count + halo;
        for (int from = 0; from < width; from += 2 * BLOCK) {
            double noise = noises.at(x0 + from, y0 + y & -BLOCK);
            float threshold = (float) test.threshold(noise, 0);
            int to = Math.min(width, from + 2 * BLOCK);
            for (int x = from; x < to; x++) {
                float v = response[at + x];
                if (v > threshold && v > response[at + x - 1] && highest(v, at + x, up + x, down + x)) {
                    judge(x, y, v, noise, found);
                }
            }
        }
    }

    private boolean highest(float v, int here, int up, int down) {
        return v >= response[here + 1]
                && v > response[up - 1]
                && v > response[up]
                && v > response[up + 1]
                && v >= response[down - 1]
                && v >= response[down]
                && v >= response[down + 1];
    }

    private void judge(int x, int y, float v, double noise, List<Detection> found) {
        double around = around(x, y);
        double threshold = test.threshold(noise, around);
        if (v <= threshold || !test.offRidge(v, ridge(x, y), threshold)) {
            return;
        }
        double sky = mesh.levelAt(x0 + x, y0 + y) - source.pedestal();
        float[] patch = patch(x, y, (float) Math.max(sky, around - 0.25 * v));
        if (test.points().star(patch, x0 + x, y0 + y)) {
            found.add(detection(x, y, noise * filter.norm(), sky));
        }
    }

    /** Mean of the square around a pixel, less the pedestal. */
    private double around(int x, int y) {
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

    private float responseAt(int x, int y) {
        return response[slot(y) * count + halo + x];
    }

    /** The most that both sides of the peak still respond in any of eight directions: high on a ridge, not on a star. */
    private float ridge(int x, int y) {
        float most = Float.NEGATIVE_INFINITY;
        for (int direction = 0; direction < 8; direction++) {
            double angle = direction * Math.PI / 8;
            int dx = (int) Math.round(filter.aside() * Math.cos(angle));
            int dy = (int) Math.round(filter.aside() * Math.sin(angle));
            most = Math.max(most, Math.min(responseAt(x + dx, y + dy), responseAt(x - dx, y - dy)));
        }
        return most;
    }

    private Detection detection(int x, int y, double noise, double sky) {
        double top = responseAt(x, y);
        double dx = vertex(responseAt(x - 1, y), top, responseAt(x + 1, y));
        double dy = vertex(responseAt(x, y - 1), top, responseAt(x, y + 1));
        double peak = 0;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                if (sampling.counts(x0 + x + i, y0 + y + j)) {
                    peak = Math.max(peak, pixels[slot(y + j) * stride + margin + x + i]);
                }
            }
        }
        double snr = noise > 0 ? top / noise : Double.POSITIVE_INFINITY;
        return new Detection(x0 + x, y0 + y, x0 + x + dx, y0 + y + dy, top, snr, peak - sky);
    }

    private static double vertex(double before, double top, double after) {
        double curvature = 2 * top - before - after;
        return curvature > 0 ? Math.max(-0.6, Math.min(0.6, 0.5 * (after - before) / curvature)) : 0;
    }

    private float[] patch(int x, int y, float local) {
        float[] patch = new float[25];
        for (int j = -2; j <= 2; j++) {
            for (int i = -2; i <= 2; i++) {
                patch[(j + 2) * 5 + i + 2] = pixels[slot(y + j) * stride + margin + x + i] - local;
            }
        }
        return patch;
    }
}
