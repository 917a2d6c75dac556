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
    private final int[] high = new int[2 * BLOCK];
    private int x0;
    private int y0;
    private int width;

    FilteredTile(Plane plane, Sampling sampling, BackgroundMesh mesh, PeakTest test, int widest) {
        this.sampling = sampling;
        this.mesh = mesh;
        this.test = test;
        this.filter = test.filter();
        this.rings = new FilterRings(new PixelRows(plane, sampling, mesh), filter, widest);
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
        for (int from = 0, to; from < width; from = to) {
            to = Math.min(width, noises.end(x0 + from) - x0);
            double noise = noises.at(x0 + from, y0 + y);
            int count = rings.above((float) test.threshold(noise, 0), from, to, y, high);
            for (int i = 0; i < count; i++) {
                if (rings.isPeak(high[i], y)) {
                    judge(high[i], y, rings.responseAt(high[i], y), noise, found);
                }
            }
        }
    }

    private void judge(int x, int y, float v, double noise, List<Detection> found) {
        double around = rings.around(x, y);
        double threshold = test.threshold(noise, around);
        if (v <= threshold || !test.offRidge(v, ridge(x, y), threshold)) {
            return;
        }
        double sky = mesh.levelAt(x0 + x, y0 + y) - mesh.level();
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
