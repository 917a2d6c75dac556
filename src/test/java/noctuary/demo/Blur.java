package noctuary.demo;

import java.util.Arrays;

/** Smoothing of planes. */
final class Blur {
    private Blur() {}

    /** Gaussian in place, borders extended. */
    static void gaussian(float[] plane, int width, int height, double sigma) {
        int reach = Math.max(1, (int) Math.ceil(3.2 * sigma));
        double[] kernel = new double[2 * reach + 1];
        double sum = 0;
        for (int k = -reach; k <= reach; k++) {
            kernel[k + reach] = StrictMath.exp(-0.5 * k * k / (sigma * sigma));
            sum += kernel[k + reach];
        }
        for (int k = 0; k < kernel.length; k++) {
            kernel[k] /= sum;
        }
        float[] copy = plane.clone();
        pass(plane, copy, width, height, kernel, true);
        pass(copy, plane, width, height, kernel, false);
    }

    private static void pass(float[] from, float[] to, int width, int height, double[] kernel, boolean along) {
        int reach = kernel.length / 2;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    int i = along ? Math.max(0, Math.min(width - 1, x + k)) : x;
                    int j = along ? y : Math.max(0, Math.min(height - 1, y + k));
                    sum += kernel[k + reach] * from[j * width + i];
                }
                to[y * width + x] = (float) sum;
            }
        }
    }

    /** Median of the square of side 2 {@code reach} + 1, borders extended. */
    static float[] median(float[] plane, int width, int height, int reach) {
        float[] out = new float[plane.length];
        float[] box = new float[(2 * reach + 1) * (2 * reach + 1)];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int n = 0;
                for (int j = y - reach; j <= y + reach; j++) {
                    for (int i = x - reach; i <= x + reach; i++) {
                        int row = Math.max(0, Math.min(height - 1, j));
                        box[n++] = plane[row * width + Math.max(0, Math.min(width - 1, i))];
                    }
                }
                Arrays.sort(box);
                out[y * width + x] = box[n / 2];
            }
        }
        return out;
    }
}
