package noctuary.effect;

import java.util.ArrayList;
import java.util.List;

/** Gaussian smoothing of the origin, as if a step had smoothed it before the stretch. */
final class Softening {
    private static final double LEAST_SIGMA_PX = 0.35;
    private static final double MOST_SIGMA_PX = 6;

    private Softening() {}

    /** The Gaussian that leaves this share of white noise, by bisection; 0 when none is needed. */
    static double sigmaPx(double noiseRatio) {
        double low = LEAST_SIGMA_PX;
        double high = MOST_SIGMA_PX;
        if (!(noiseRatio < left(low))) {
            return 0;
        }
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (left(middle) > noiseRatio) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Standard deviation of white noise after smoothing along both axes: the sum of the squared kernel. */
    static double left(double sigma) {
        double sum = 0;
        for (double k : kernel(sigma)) {
            sum += k * k;
        }
        return sum;
    }

    private static double[] kernel(double sigma) {
        int reach = (int) Math.ceil(4 * sigma);
        double[] kernel = new double[2 * reach + 1];
        double sum = 0;
        for (int k = -reach; k <= reach; k++) {
            kernel[k + reach] = Math.exp(-0.5 * k * k / (sigma * sigma));
            sum += kernel[k + reach];
        }
        for (int k = 0; k < kernel.length; k++) {
            kernel[k] /= sum;
        }
        return kernel;
    }

    /** The same tiles with a smoothed origin; pixels within reach of an edge or a gap are missing. */
    static List<Tile> of(List<Tile> tiles, double sigma) {
        double[] kernel = kernel(sigma);
        List<Tile> soft = new ArrayList<>();
        for (Tile t : tiles) {
            float[] once = along(t.origin(), kernel, t.width(), t.height(), 1, 0);
            float[] twice = along(once, kernel, t.width(), t.height(), 0, 1);
            soft.add(new Tile(t.x(), t.y(), t.width(), t.height(), twice, t.picture(), t.colours()));
        }
        return soft;
    }

    private static float[] along(float[] values, double[] kernel, int width, int height, int dx, int dy) {
        int reach = kernel.length / 2;
        float[] out = new float[values.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                boolean inside =
                        x - reach * dx >= 0 && x + reach * dx < width && y - reach * dy >= 0 && y + reach * dy < height;
                double sum = inside ? 0 : Double.NaN;
                for (int k = -reach; inside && k <= reach; k++) {
                    sum += kernel[k + reach] * values[(y + k * dy) * width + x + k * dx];
                }
                out[y * width + x] = (float) sum;
            }
        }
        return out;
    }
}
