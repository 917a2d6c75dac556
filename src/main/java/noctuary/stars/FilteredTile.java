package noctuary.stars;

import java.util.ArrayList;
import java.util.List;
import noctuary.image.Plane;

/** Runs the matched filter down a tile of the plane and collects its peaks. Reused from tile to tile, by one thread. */
final class FilteredTile {
    private static final int BLOCK = 32;

    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final PeakTest test;
    private final MatchedFilter filter;
    private final FilterRings rings;
    private final BlockMap noises;
    private final int[] peaks = new int[2 * BLOCK];
    private int x0;
    private int y0;
    private int width;

    FilteredTile(Plane plane, Sampling sampling, BackgroundMesh mesh, PeakTest test, int widest) {
        this.sampling = sampling;
        this.mesh = mesh;
        this.test = test;
        this.filter = test.filter();
        this.rings = new FilterRings(plane, sampling, mesh, filter, widest);
        this.noises = new BlockMap(BLOCK, mesh::noiseAt);
    }

    /** Peaks of the tile at (x, y), no wider than the widest. */
    List<Detection> search(int x, int y, int tileWidth, int tileHeight) {
        x0 = x;
        y0 = y;
        width = tileWidth;
        rings.begin(x, y, tileWidth);
        List<Detection> found = new ArrayList<>();
        int margin = rings.margin();
        for (int row = -margin; row < tileHeight + margin; row++) {
            int scan = rings.read(row) - rings.halo();
            if (scan >= 0 && scan < tileHeight) {
                scan(scan, found);
            }
        }
        return found;
    }

    private void scan(int y, List<Detection> found) {
        for (int from = 0; from < width; from += 2 * BLOCK) {
            double noise = noises.at(x0 + from, y0 + y & -BLOCK);
            int count = peaks(from, Math.min(width, from + 2 * BLOCK), y, (float) test.threshold(noise, 0));
            for (int i = 0; i < count; i++) {
                judge(peaks[i], y, rings.responseAt(peaks[i], y), noise, found);
            }
        }
    }

    /** Columns of the peaks of a block; apart from the judging, which would make the loop slow to compile. */
    private int peaks(int from, int to, int y, float threshold) {
        float[] response = rings.response();
        int at = rings.indexOf(y);
        int up = rings.indexOf(y - 1);
        int down = rings.indexOf(y + 1);
        int count = 0;
        for (int x = from; x < to; x++) {
            float v = response[at + x];
            if (v > threshold && v > response[at + x - 1] && highest(response, v, at + x, up + x, down + x)) {
                peaks[count++] = x;
            }
        }
        return count;
    }

    private static boolean highest(float[] response, float v, int here, int up, int down) {
        return v >= response[here + 1]
                && v > response[up - 1]
                && v > response[up]
                && v > response[up + 1]
                && v >= response[down - 1]
                && v >= response[down]
                && v >= response[down + 1];
    }

    private void judge(int x, int y, float v, double noise, List<Detection> found) {
        double around = rings.around(x, y);
        double threshold = test.threshold(noise, around);
        if (v <= threshold || !test.offRidge(v, ridge(x, y), threshold)) {
            return;
        }
        double sky = mesh.levelAt(x0 + x, y0 + y) - rings.pedestal();
        float[] patch = patch(x, y, (float) Math.max(sky, around - 0.25 * v));
        if (test.points().star(patch, x0 + x, y0 + y)) {
            found.add(detection(x, y, noise * filter.norm(), sky));
        }
    }

    /** The most that both sides of the peak still respond in any of eight directions: high on a ridge, not on a star. */
    private float ridge(int x, int y) {
        float most = Float.NEGATIVE_INFINITY;
        for (int direction = 0; direction < 8; direction++) {
            double angle = direction * Math.PI / 8;
            int dx = (int) Math.round(filter.aside() * Math.cos(angle));
            int dy = (int) Math.round(filter.aside() * Math.sin(angle));
            most = Math.max(most, Math.min(rings.responseAt(x + dx, y + dy), rings.responseAt(x - dx, y - dy)));
        }
        return most;
    }

    private Detection detection(int x, int y, double noise, double sky) {
        double top = rings.responseAt(x, y);
        double dx = vertex(rings.responseAt(x - 1, y), top, rings.responseAt(x + 1, y));
        double dy = vertex(rings.responseAt(x, y - 1), top, rings.responseAt(x, y + 1));
        double peak = 0;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                if (sampling.counts(x0 + x + i, y0 + y + j)) {
                    peak = Math.max(peak, rings.pixelAt(x + i, y + j));
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
                patch[(j + 2) * 5 + i + 2] = rings.pixelAt(x + i, y + j) - local;
            }
        }
        return patch;
    }
}
