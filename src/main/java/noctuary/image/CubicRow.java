package noctuary.image;

import java.util.Arrays;

/** One row of a block of the result. */
final class CubicRow {
    private static final int PHASES = CubicKernel.PHASES;
    private static final int FOUR = 4;

    private final SourceCut cut;
    private final Affine map;
    private final CubicKernel kernel;

    CubicRow(SourceCut cut, Affine map, CubicKernel kernel) {
        this.cut = cut;
        this.map = map;
        this.kernel = kernel;
    }

    /** Missing are pixels beyond the plane, which lie at the ends of a row: those between are one plain loop. */
    void fill(int left, int right, int y, float[] into, int rowStart) {
        int from = left;
        int to = right;
        while (from < to && !inside(from, y)) {
            from++;
        }
        while (to > from && !inside(to - 1, y)) {
            to--;
        }
        Arrays.fill(into, rowStart + left, rowStart + from, Float.NaN);
        Arrays.fill(into, rowStart + to, rowStart + right, Float.NaN);
        double edgeX = map.xy() * y + map.x0() - kernel.reach() - cut.fromX();
        double edgeY = map.yy() * y + map.y0() - kernel.reach() - cut.fromY();
        if (kernel.taps() == FOUR) {
            sixteen(from, to, edgeX, edgeY, into, rowStart);
        } else {
            wide(from, to, edgeX, edgeY, into, rowStart);
        }
    }

    private boolean inside(int x, int y) {
        double sx = map.x(x, y);
        double sy = map.y(x, y);
        return sx >= -0.5 && sy >= -0.5 && sx <= cut.planeWidth() - 0.5 && sy <= cut.planeHeight() - 0.5;
    }

    /** Four by four pixels each; written out, since this is where the time goes. */
    private void sixteen(int from, int to, double edgeX, double edgeY, float[] into, int rowStart) {
        float[] p = cut.pixels();
        float[] k = kernel.weights();
        int w = cut.width();
        double xx = map.xx();
        double yx = map.yx();
        for (int x = from; x < to; x++) {
            double sx = xx * x + edgeX;
            double sy = yx * x + edgeY;
            int ix = (int) sx + 1;
            int iy = (int) sy + 1;
            into[rowStart + x] = sixteen(p, iy * w + ix, w, k, phase(ix - sx) * FOUR, phase(iy - sy) * FOUR);
        }
    }

    private static int phase(double behindEdge) {
        return (int) (behindEdge * PHASES + 0.5);
    }

    private static float sixteen(float[] p, int i, int w, float[] k, int u, int v) {
        float a = k[u];
        float b = k[u + 1];
        float c = k[u + 2];
        float d = k[u + 3];
        int j = i + w;
        int l = j + w;
        int m = l + w;
        return k[v] * (a * p[i] + b * p[i + 1] + c * p[i + 2] + d * p[i + 3])
                + k[v + 1] * (a * p[j] + b * p[j + 1] + c * p[j + 2] + d * p[j + 3])
                + k[v + 2] * (a * p[l] + b * p[l + 1] + c * p[l + 2] + d * p[l + 3])
                + k[v + 3] * (a * p[m] + b * p[m + 1] + c * p[m + 2] + d * p[m + 3]);
    }

    private void wide(int from, int to, double edgeX, double edgeY, float[] into, int rowStart) {
        int w = cut.width();
        int taps = kernel.taps();
        for (int x = from; x < to; x++) {
            double sx = map.xx() * x + edgeX;
            double sy = map.yx() * x + edgeY;
            int ix = (int) sx + 1;
            int iy = (int) sy + 1;
            into[rowStart + x] = wide(
                    cut.pixels(), iy * w + ix, w, kernel.weights(), phase(ix - sx) * taps, phase(iy - sy) * taps, taps);
        }
    }

    private static float wide(float[] p, int first, int w, float[] k, int u, int v, int taps) {
        float sum = 0;
        for (int row = 0; row < taps; row++) {
            int i = first + row * w;
            float line = 0;
            for (int tap = 0; tap < taps; tap++) {
                line += k[u + tap] * p[i + tap];
            }
            sum += k[v + row] * line;
        }
        return sum;
    }
}
