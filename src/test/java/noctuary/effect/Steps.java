package noctuary.effect;

import java.util.Arrays;

/** Processing steps of known strength, on square planes. */
final class Steps {
    private static final int SIDE = PlantedSky.SIDE;

    private Steps() {}

    /** background + (1 - background) asinh(strength (x - sky) / white) / asinh(strength), ends cut. */
    static float[] stretch(float[] linear, double strength, double background) {
        double white = 6000;
        float[] out = new float[linear.length];
        for (int i = 0; i < out.length; i++) {
            double u = strength * (linear[i] - PlantedSky.LEVEL) / white;
            double v = Math.log(Math.abs(u) + Math.sqrt(u * u + 1)) * Math.signum(u);
            double top = Math.log(strength + Math.sqrt(strength * strength + 1));
            out[i] = (float) Math.max(0, Math.min(1, background + (1 - background) * v / top));
        }
        return out;
    }

    static double[] kernel(double sigma) {
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

    /** What a kernel along both axes leaves of white noise. */
    static double left(double sigma) {
        return Arrays.stream(kernel(sigma)).map(k -> k * k).sum();
    }

    static float[] gaussian(float[] plane, double sigma) {
        return along(along(plane, kernel(sigma), 1, 0), kernel(sigma), 0, 1);
    }

    private static float[] along(float[] plane, double[] kernel, int dx, int dy) {
        int reach = kernel.length / 2;
        float[] out = new float[plane.length];
        for (int i = 0; i < out.length; i++) {
            double sum = 0;
            for (int k = -reach; k <= reach; k++) {
                int x = Math.max(0, Math.min(SIDE - 1, i % SIDE + k * dx));
                int y = Math.max(0, Math.min(SIDE - 1, i / SIDE + k * dy));
                sum += kernel[k + reach] * plane[y * SIDE + x];
            }
            out[i] = (float) sum;
        }
        return out;
    }

    static float[] median3(float[] plane) {
        float[] out = new float[plane.length];
        float[] box = new float[9];
        for (int i = 0; i < out.length; i++) {
            for (int k = 0; k < 9; k++) {
                int x = Math.max(0, Math.min(SIDE - 1, i % SIDE + k % 3 - 1));
                int y = Math.max(0, Math.min(SIDE - 1, i / SIDE + k / 3 - 1));
                box[k] = plane[y * SIDE + x];
            }
            float[] sorted = box.clone();
            Arrays.sort(sorted);
            out[i] = sorted[4];
        }
        return out;
    }

    /** plane + amount (plane - smoothed). */
    static float[] sharpen(float[] plane, double sigma, double amount) {
        float[] smooth = gaussian(plane, sigma);
        float[] out = new float[plane.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) (plane[i] + amount * (plane[i] - smooth[i]));
        }
        return out;
    }

    /** Half width at half height of a Moffat profile under a Gaussian, from sums over a fine grid, times two. */
    static double smoothedFwhm(double fwhm, double beta, double sigma) {
        double alpha = fwhm / 2 / Math.sqrt(Math.pow(2, 1 / beta) - 1);
        double half = smoothed(0, alpha, beta, sigma) / 2;
        double low = 0;
        double high = 4 * (fwhm + sigma);
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (smoothed(middle, alpha, beta, sigma) > half) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 2 * low;
    }

    private static double smoothed(double r, double alpha, double beta, double sigma) {
        double sum = 0;
        double pace = sigma / 8;
        for (double dy = -5 * sigma; dy <= 5 * sigma; dy += pace) {
            for (double dx = -5 * sigma; dx <= 5 * sigma; dx += pace) {
                double weight = Math.exp(-(dx * dx + dy * dy) / (2 * sigma * sigma));
                double r2 = (r - dx) * (r - dx) + dy * dy;
                sum += weight * Math.pow(1 + r2 / (alpha * alpha), -beta);
            }
        }
        return sum;
    }
}
