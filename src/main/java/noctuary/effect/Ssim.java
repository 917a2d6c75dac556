package noctuary.effect;

/**
 * Structural similarity after Wang et al. 2004 (IEEE Trans. Image Processing 13, 600): Gaussian window of sigma 1.5 px
 * on 11 x 11 px, population moments, C1 = (0.01 L)², C2 = (0.03 L)².
 */
final class Ssim {
    private static final int REACH = 5;
    private static final double SIGMA = 1.5;
    private static final double[] WINDOW = window();

    private Ssim() {}

    private static double[] window() {
        double[] window = new double[2 * REACH + 1];
        double sum = 0;
        for (int k = -REACH; k <= REACH; k++) {
            window[k + REACH] = Math.exp(-0.5 * k * k / (SIGMA * SIGMA));
            sum += window[k + REACH];
        }
        for (int k = 0; k < window.length; k++) {
            window[k] /= sum;
        }
        return window;
    }

    /** Mean over all windows that lie within the rectangle and hold no NaN; NaN when none does. */
    static double mean(float[] a, float[] b, int width, int height, double range) {
        double[][] moments = new double[5][width * height];
        for (int i = 0; i < a.length; i++) {
            moments[0][i] = a[i];
            moments[1][i] = b[i];
            moments[2][i] = (double) a[i] * a[i];
            moments[3][i] = (double) b[i] * b[i];
            moments[4][i] = (double) a[i] * b[i];
        }
        for (int m = 0; m < moments.length; m++) {
            moments[m] = smoothed(smoothed(moments[m], width, 1), width, width);
        }
        double sum = 0;
        long count = 0;
        for (int y = REACH; y < height - REACH; y++) {
            for (int x = REACH; x < width - REACH; x++) {
                double value = at(moments, y * width + x, range);
                if (!Double.isNaN(value)) {
                    sum += value;
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    private static double at(double[][] m, int i, double range) {
        double c1 = Math.pow(0.01 * range, 2);
        double c2 = Math.pow(0.03 * range, 2);
        double meanA = m[0][i];
        double meanB = m[1][i];
        double varianceA = m[2][i] - meanA * meanA;
        double varianceB = m[3][i] - meanB * meanB;
        double covariance = m[4][i] - meanA * meanB;
        return (2 * meanA * meanB + c1)
                * (2 * covariance + c2)
                / ((meanA * meanA + meanB * meanB + c1) * (varianceA + varianceB + c2));
    }

    /** Along the rows (step 1) or the columns (step = width); what lies within the reach of an end is left at 0. */
    private static double[] smoothed(double[] values, int width, int step) {
        double[] out = new double[values.length];
        for (int i = REACH * step; i < values.length - REACH * step; i++) {
            int x = i % width;
            if (step == 1 && (x < REACH || x >= width - REACH)) {
                continue;
            }
            double sum = 0;
            for (int k = -REACH; k <= REACH; k++) {
                sum += WINDOW[k + REACH] * values[i + k * step];
            }
            out[i] = sum;
        }
        return out;
    }
}
