package noctuary.image;

/** One row of a block of the result. */
final class CubicRow {
    /** Steps within a pixel at which weights are known: positions are rounded to 1/2048 of a pixel. */
    private static final int PHASES = 1024;

    /** Four weights a step. */
    private static final float[] KEYS = table();

    private final SourceCut cut;
    private final Affine map;
    private final double step;
    private final float[] across;
    private final float[] down;

    /** @param step by how much the kernel is widened, at least 1 */
    CubicRow(SourceCut cut, Affine map, double step) {
        this.cut = cut;
        this.map = map;
        this.step = step;
        int taps = (int) Math.ceil(4 * step) + 2;
        this.across = new float[taps];
        this.down = new float[taps];
    }

    void fill(int left, int right, int y, float[] into, int rowStart) {
        if (step == 1) {
            sixteen(left, right, y, into, rowStart);
            return;
        }
        for (int x = left; x < right; x++) {
            into[rowStart + x] = wide(map.x(x, y), map.y(x, y));
        }
    }

    /** Four by four pixels each; written out, since this is where the time goes. */
    private void sixteen(int left, int right, int y, float[] into, int rowStart) {
        float[] p = cut.pixels();
        int w = cut.width();
        double x0 = map.xy() * y + map.x0();
        double y0 = map.yy() * y + map.y0();
        double farX = cut.planeWidth() - 0.5;
        double farY = cut.planeHeight() - 0.5;
        for (int x = left; x < right; x++) {
            double sx = map.xx() * x + x0;
            double sy = map.yx() * x + y0;
            if (!(sx >= -0.5 && sy >= -0.5 && sx <= farX && sy <= farY)) {
                into[rowStart + x] = Float.NaN;
                continue;
            }
            int ix = (int) (sx + 1) - 1;
            int iy = (int) (sy + 1) - 1;
            int u = (int) ((sx - ix) * PHASES + 0.5) << 2;
            int v = (int) ((sy - iy) * PHASES + 0.5) << 2;
            int i = (iy - 1 - cut.fromY()) * w + ix - 1 - cut.fromX();
            int j = i + w;
            int k = j + w;
            int l = k + w;
            float a = KEYS[u];
            float b = KEYS[u + 1];
            float c = KEYS[u + 2];
            float d = KEYS[u + 3];
            into[rowStart + x] = KEYS[v] * (a * p[i] + b * p[i + 1] + c * p[i + 2] + d * p[i + 3])
                    + KEYS[v + 1] * (a * p[j] + b * p[j + 1] + c * p[j + 2] + d * p[j + 3])
                    + KEYS[v + 2] * (a * p[k] + b * p[k + 1] + c * p[k + 2] + d * p[k + 3])
                    + KEYS[v + 3] * (a * p[l] + b * p[l + 1] + c * p[l + 2] + d * p[l + 3]);
        }
    }

    private float wide(double sx, double sy) {
        if (!(sx >= -0.5 && sy >= -0.5 && sx <= cut.planeWidth() - 0.5 && sy <= cut.planeHeight() - 0.5)) {
            return Float.NaN;
        }
        int left = (int) Math.ceil(sx - 2 * step);
        int top = (int) Math.ceil(sy - 2 * step);
        int columns = weights(sx, left, across);
        int rows = weights(sy, top, down);
        double sum = 0;
        for (int j = 0; j < rows; j++) {
            int at = (top + j - cut.fromY()) * cut.width() + left - cut.fromX();
            float line = 0;
            for (int i = 0; i < columns; i++) {
                line += across[i] * cut.pixels()[at + i];
            }
            sum += down[j] * line;
        }
        return (float) sum;
    }

    /** Weights of the pixels from {@code first} on, their sum 1; returns how many. */
    private int weights(double at, int first, float[] into) {
        int count = (int) Math.floor(at + 2 * step) - first + 1;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double weight = keys(Math.abs(at - first - i) / step);
            into[i] = (float) weight;
            sum += weight;
        }
        for (int i = 0; i < count; i++) {
            into[i] /= (float) sum;
        }
        return count;
    }

    private static float[] table() {
        float[] table = new float[4 * (PHASES + 1)];
        for (int i = 0; i < table.length; i++) {
            table[i] = (float) keys(Math.abs((i >> 2) / (double) PHASES + 1 - (i & 3)));
        }
        return table;
    }

    /** Keys's kernel at a distance of 0 to 2. */
    private static double keys(double t) {
        return t < 1 ? (1.5 * t - 2.5) * t * t + 1 : t < 2 ? ((-0.5 * t + 2.5) * t - 4) * t + 2 : 0;
    }
}
