package noctuary.stars;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import noctuary.image.Plane;

/**
 * A rectangle of the plane and its filtered twin. Beyond the plane's edges pixels are mirrored; missing pixels take the
 * mesh level, pixels that do not count the mean of their four neighbours. Reused from tile to tile, by one thread.
 */
final class FilteredTile {
    private static final int BLOCK = 16;
    private static final double CEILING_SIGMAS = 4;

    private final Plane plane;
    private final Sampling sampling;
    private final BackgroundMesh mesh;
    private final MatchedFilter filter;
    private final BlockMap ceilings;
    private final BlockMap noises;
    private final float pedestal;
    private final int halo;
    private final int margin;
    private int x0;
    private int y0;
    private int width;
    private int height;
    private int stride;
    private float[] pixels = new float[0];
    private float[] smooth = new float[0];
    private float[] means = new float[0];
    private float[] response = new float[0];
    private float[] around = new float[0];
    private float[] clipped = new float[0];
    private float[] work = new float[0];
    private float[] spare = new float[0];

    FilteredTile(Plane plane, Sampling sampling, BackgroundMesh mesh, MatchedFilter filter) {
        this.plane = plane;
        this.sampling = sampling;
        this.mesh = mesh;
        this.filter = filter;
        this.ceilings = new BlockMap(BLOCK, (x, y) -> mesh.roughnessAt(x, y) > 0
                ? Double.MAX_VALUE
                : mesh.levelAt(x, y) + CEILING_SIGMAS * mesh.noiseAt(x, y));
        this.noises = new BlockMap(BLOCK, mesh::noiseAt);
        this.pedestal = (float) mesh.level();
        this.halo = filter.aside() + 1;
        this.margin = filter.square() + halo + 1;
    }

    void load(int x, int y, int w, int h) {
        x0 = x;
        y0 = y;
        width = w;
        height = h;
        stride = w + 2 * margin;
        int rows = h + 2 * margin;
        if (pixels.length < stride * rows) {
            pixels = new float[stride * rows];
            smooth = new float[(w + 2 * halo) * rows];
            means = new float[(w + 2 * halo) * rows];
            response = new float[(w + 2 * halo) * (h + 2 * halo)];
            around = new float[(w + 2 * halo) * (h + 2 * halo)];
            clipped = new float[stride];
            work = new float[stride];
            spare = new float[stride];
        }
        for (int row = 0; row < rows; row++) {
            loadRow(mirrored(y0 - margin + row, plane.height()), row);
        }
        if (!sampling.all()) {
            for (int row = 1; row < rows - 1; row++) {
                fillRow(row);
            }
        }
        alongRows(rows);
        downColumns();
    }

    private void loadRow(int y, int row) {
        int start = row * stride;
        int from = Math.max(0, x0 - margin);
        int to = Math.min(plane.width(), x0 + width + margin);
        int first = start + from - (x0 - margin);
        plane.copyRow(from, y, to - from, pixels, first);
        for (int i = first; i < first + to - from; i++) {
            pixels[i] -= pedestal;
        }
        for (int i = 0; i < stride; i++) {
            int x = x0 - margin + i;
            if (x < from || x >= to) {
                int m = mirrored(x, plane.width());
                boolean inside = m >= from && m < to;
                pixels[start + i] = inside ? pixels[start + m - (x0 - margin)] : plane.at(m, y) - pedestal;
            }
        }
        for (int i = start; i < start + stride; i++) {
            if (pixels[i] != pixels[i]) {
                pixels[i] = (float) mesh.levelAt(x0 - margin + i - start, y) - pedestal;
            }
        }
    }

    /** Index within the plane, mirrored at its outermost pixels, which keeps the colour of a mosaic. */
    private static int mirrored(int index, int length) {
        if (length == 1) {
            return 0;
        }
        int period = 2 * (length - 1);
        int i = Math.floorMod(index, period);
        return i < length ? i : period - i;
    }

    private void fillRow(int row) {
        int start = row * stride;
        int y = y0 - margin + row;
        for (int i = 1; i < stride - 1; i++) {
            if (!sampling.counts(x0 - margin + i, y)) {
                int k = start + i;
                pixels[k] = 0.25f * (pixels[k - 1] + pixels[k + 1] + pixels[k - stride] + pixels[k + stride]);
            }
        }
    }

    private void alongRows(int rows) {
        int count = width + 2 * halo;
        for (int row = 0; row < rows; row++) {
            int from = row * stride + margin - halo;
            int to = row * count;
            filter.along(pixels, from, smooth, to, count);
            clip(row);
            filter.meanAlong(clipped, margin - halo, means, to, count, work, spare);
        }
    }

    /** Keeps neighbours from lifting the mean around faint stars; where the sky has structure nothing is cut. */
    private void clip(int row) {
        int y = Math.max(0, Math.min(plane.height() - 1, (y0 - margin + row) & ~(BLOCK - 1)));
        for (int i = 0; i < stride; i += 2 * BLOCK) {
            int to = Math.min(stride, i + 2 * BLOCK);
            float top = ceilings.at(x0 - margin + i, y) - pedestal;
            for (int k = i; k < to; k++) {
                clipped[k] = Math.min(top, pixels[row * stride + k]);
            }
        }
    }

    private void downColumns() {
        int w = width + 2 * halo;
        int side = 2 * filter.square() + 1;
        float[] sum = work;
        Arrays.fill(sum, 0);
        int first = margin - halo - filter.square();
        for (int row = first; row < first + side - 1; row++) {
            add(means, row * w, sum, w, 1);
        }
        for (int row = 0; row < height + 2 * halo; row++) {
            add(means, (first + row + side - 1) * w, sum, w, 1);
            responseRow(row * w, (row + margin - halo) * w, w, sum, 1f / side);
            add(means, (first + row) * w, sum, w, -1);
        }
    }

    private void responseRow(int out, int centre, int w, float[] sum, float scale) {
        float[] taps = filter.taps();
        for (int i = 0; i < w; i++) {
            around[out + i] = sum[i] * scale;
        }
        for (int i = 0; i < w; i++) {
            response[out + i] = taps[0] * smooth[centre + i] - around[out + i];
        }
        for (int k = 1; k < taps.length; k++) {
            float t = taps[k];
            int up = centre - k * w;
            int down = centre + k * w;
            for (int i = 0; i < w; i++) {
                response[out + i] += t * (smooth[up + i] + smooth[down + i]);
            }
        }
    }

    private static void add(float[] from, int start, float[] sum, int count, float sign) {
        for (int i = 0; i < count; i++) {
            sum[i] += sign * from[start + i];
        }
    }

    /** Local maxima whose response exceeds so many sigmas of sky noise and of the light around. */
    List<Detection> peaks(double sigmas, double photonSlope) {
        List<Detection> found = new ArrayList<>();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x += 2 * BLOCK) {
                double noise = noises.at(x0 + x, (y0 + y) & ~(BLOCK - 1));
                scan(x, Math.min(width, x + 2 * BLOCK), y, noise, sigmas, photonSlope, found);
            }
        }
        return found;
    }

    private void scan(
            int from, int to, int y, double noise, double sigmas, double photonSlope, List<Detection> found) {
        int w = width + 2 * halo;
        float threshold = (float) (sigmas * noise * filter.norm());
        for (int k = (y + halo) * w + halo + from, x = from; x < to; x++, k++) {
            float v = response[k];
            if (v > threshold && highest(k, w)) {
                double light = Math.max(0, around[k] + pedestal - mesh.level());
                double least = sigmas * Math.sqrt(noise * noise + photonSlope * light) * filter.norm();
                if (v > least && v - ridge(k, w) > 0.8 * least) {
                    found.add(detection(x, y, k, w, noise * filter.norm()));
                }
            }
        }
    }

    /** The most that both sides of the peak still respond in any of eight directions: high on a ridge, not on a star. */
    private float ridge(int k, int w) {
        float most = Float.NEGATIVE_INFINITY;
        for (int direction = 0; direction < 8; direction++) {
            double angle = direction * Math.PI / 8;
            int step = (int) Math.round(filter.aside() * Math.sin(angle)) * w
                    + (int) Math.round(filter.aside() * Math.cos(angle));
            most = Math.max(most, Math.min(response[k - step], response[k + step]));
        }
        return Math.max(0, most);
    }

    private boolean highest(int k, int w) {
        float v = response[k];
        return v > response[k - 1]
                && v >= response[k + 1]
                && v > response[k - w]
                && v > response[k - w - 1]
                && v > response[k - w + 1]
                && v >= response[k + w]
                && v >= response[k + w - 1]
                && v >= response[k + w + 1];
    }

    private Detection detection(int x, int y, int k, int w, double noise) {
        double top = response[k];
        double dx = vertex(response[k - 1], top, response[k + 1]);
        double dy = vertex(response[k - w], top, response[k + w]);
        double peak = 0;
        int centre = (y + margin) * stride + x + margin;
        for (int j = -1; j <= 1; j++) {
            for (int i = -1; i <= 1; i++) {
                if (sampling.counts(x0 + x + i, y0 + y + j)) {
                    peak = Math.max(peak, pixels[centre + j * stride + i]);
                }
            }
        }
        return new Detection(
                x0 + x,
                y0 + y,
                x0 + x + dx,
                y0 + y + dy,
                top,
                noise > 0 ? top / noise : Double.POSITIVE_INFINITY,
                peak + pedestal - mesh.levelAt(x0 + x, y0 + y));
    }

    private static double vertex(double before, double top, double after) {
        double curvature = 2 * top - before - after;
        return curvature > 0 ? Math.max(-0.6, Math.min(0.6, 0.5 * (after - before) / curvature)) : 0;
    }

    /** 5 x 5 pixels around a detection, above the mean of the square around it less the star's own part. */
    float[] patch(Detection d) {
        int k = (d.y() - y0 + halo) * (width + 2 * halo) + d.x() - x0 + halo;
        double sky = mesh.levelAt(d.x(), d.y()) - pedestal;
        double local = Math.max(sky, around[k] - 0.25 * d.response());
        int centre = (d.y() - y0 + margin) * stride + d.x() - x0 + margin;
        float[] patch = new float[25];
        for (int j = -2; j <= 2; j++) {
            for (int i = -2; i <= 2; i++) {
                patch[(j + 2) * 5 + i + 2] = (float) (pixels[centre + j * stride + i] - local);
            }
        }
        return patch;
    }
}
