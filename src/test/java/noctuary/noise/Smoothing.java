package noctuary.noise;

import noctuary.image.Plane;

/** Separable Gaussian smoothing and what it does to white noise, from the sampled weights themselves. */
final class Smoothing {
    private Smoothing() {}

    static double[] kernel(double sigma) {
        int reach = 6;
        double[] kernel = new double[2 * reach + 1];
        double sum = 0;
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] = Math.exp(-(i - reach) * (i - reach) / (2 * sigma * sigma));
            sum += kernel[i];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= sum;
        }
        return kernel;
    }

    static Plane apply(Plane plane, double[] kernel) {
        return along(along(plane, kernel, 1, 0), kernel, 0, 1);
    }

    private static Plane along(Plane plane, double[] kernel, int stepX, int stepY) {
        int reach = kernel.length / 2;
        float[] pixels = new float[plane.width() * plane.height()];
        for (int y = 0; y < plane.height(); y++) {
            for (int x = 0; x < plane.width(); x++) {
                double sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    int xx = Math.floorMod(x + k * stepX, plane.width());
                    int yy = Math.floorMod(y + k * stepY, plane.height());
                    sum += kernel[k + reach] * plane.at(xx, yy);
                }
                pixels[y * plane.width() + x] = (float) sum;
            }
        }
        return Plane.of(plane.width(), plane.height(), pixels);
    }

    /** Standard deviation of a smoothed pixel over that before. */
    static double noiseLeft(double[] kernel) {
        return alike(kernel, 0);
    }

    /** Standard deviation of means of size x size smoothed pixels, times size, over that of a pixel before. */
    static double blockNoise(double[] kernel, int size) {
        double sum = 0;
        for (int lag = -size + 1; lag < size; lag++) {
            sum += (size - Math.abs(lag)) * alike(kernel, Math.abs(lag));
        }
        return sum / size;
    }

    private static double alike(double[] kernel, int lag) {
        double sum = 0;
        for (int i = 0; i + lag < kernel.length; i++) {
            sum += kernel[i] * kernel[i + lag];
        }
        return sum;
    }
}
