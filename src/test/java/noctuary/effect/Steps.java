package noctuary.effect;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

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

    /** asinh(strength (x - black) / white) / asinh(strength) with black {@code below} the sky, ends cut. */
    static float[] fromBlack(float[] linear, double strength, double below) {
        double white = 6000;
        float[] out = new float[linear.length];
        for (int i = 0; i < out.length; i++) {
            double u = strength * Math.max(0, linear[i] - PlantedSky.LEVEL + below) / white;
            double top = Math.log(strength + Math.sqrt(strength * strength + 1));
            out[i] = (float) Math.min(1, Math.log(u + Math.sqrt(u * u + 1)) / top);
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

    /** Standard deviation of white noise of 1 in means over squares of {@code size} px after a Gaussian. */
    static double meansLeft(double sigma, int size) {
        double[] kernel = kernel(sigma);
        double[] sums = new double[kernel.length + size - 1];
        for (int i = 0; i < sums.length; i++) {
            for (int k = Math.max(0, i - size + 1); k <= Math.min(kernel.length - 1, i); k++) {
                sums[i] += kernel[k] / size;
            }
        }
        return Arrays.stream(sums).map(s -> s * s).sum();
    }

    /** Standard deviation of white noise of 1 after {@link #sharpen}. */
    static double sharpenedNoise(double sigma, double amount) {
        double[] k = kernel(sigma);
        double middle = k[k.length / 2] * k[k.length / 2];
        double up = 1 + amount;
        return Math.sqrt(up * up - 2 * up * amount * middle + Math.pow(amount * left(sigma), 2));
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

    /** Full width at half height of a Moffat profile under a Gaussian, from sums over a fine grid. */
    static double smoothedFwhm(double fwhm, double beta, double sigma) {
        return width(r -> smoothed(r, fwhm, beta, sigma), 4 * (fwhm + sigma));
    }

    /** The same of the profile plus {@code amount} times its distance from the smoothed one. */
    static double sharpenedFwhm(double fwhm, double beta, double sigma, double amount) {
        return width(r -> (1 + amount) * moffat(r * r, fwhm, beta) - amount * smoothed(r, fwhm, beta, sigma), 2 * fwhm);
    }

    private static double width(DoubleUnaryOperator profile, double most) {
        double half = profile.applyAsDouble(0) / 2;
        double low = 0;
        double high = most;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (profile.applyAsDouble(middle) > half) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 2 * low;
    }

    private static double moffat(double r2, double fwhm, double beta) {
        return Math.pow(1 + 4 * r2 / (fwhm * fwhm) * (Math.pow(2, 1 / beta) - 1), -beta);
    }

    private static double smoothed(double r, double fwhm, double beta, double sigma) {
        double sum = 0;
        double all = 0;
        double pace = sigma / 8;
        for (double dy = -5 * sigma; dy <= 5 * sigma; dy += pace) {
            for (double dx = -5 * sigma; dx <= 5 * sigma; dx += pace) {
                double weight = Math.exp(-(dx * dx + dy * dy) / (2 * sigma * sigma));
                all += weight;
                sum += weight * moffat((r - dx) * (r - dx) + dy * dy, fwhm, beta);
            }
        }
        return sum / all;
    }
}
