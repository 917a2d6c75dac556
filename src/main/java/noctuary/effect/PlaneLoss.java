package noctuary.effect;

import java.util.Arrays;

/**
 * What is left of the variance of means over squares when the plane through a whole block is taken off, for white noise
 * smoothed by a Gaussian. Worked out axis by axis, because both the noise and the modes of a plane are products of one
 * function of x and one of y.
 */
final class PlaneLoss {
    private static final int SIDE = Block.SIDE;

    /** Sums over a cell, of 1 and of x, both modes normalised over the block; and the same of the mode under the noise. */
    private record Cell(double flat, double slope, double flatUnder, double slopeUnder) {}

    private final Cell[] cells;
    private final double alone;
    private final double flat;
    private final double slope;

    private PlaneLoss(double sigma, int size) {
        double[][] modes = modes();
        double[][] under = {under(modes[0], sigma), under(modes[1], sigma)};
        double[] first = new double[SIDE];
        Arrays.fill(first, 0, size, 1.0 / size);
        this.alone = mean(under(first, sigma), 0, size);
        this.flat = dot(modes[0], under[0]);
        this.slope = dot(modes[1], under[1]);
        this.cells = new Cell[SIDE / size];
        for (int c = 0; c < cells.length; c++) {
            int from = c * size;
            cells[c] = new Cell(
                    mean(modes[0], from, size),
                    mean(modes[1], from, size),
                    mean(under[0], from, size),
                    mean(under[1], from, size));
        }
    }

    /**
     * @param sigma of the Gaussian, px
     * @param size side of the squares, px
     * @return share, 1 when nothing is lost
     */
    static double kept(double sigma, int size) {
        return new PlaneLoss(sigma, size).kept();
    }

    private double kept() {
        double whole = alone * alone;
        double sum = 0;
        for (Cell x : cells) {
            for (Cell y : cells) {
                sum += whole
                        - 2 * x.flat * y.flat * x.flatUnder * y.flatUnder
                        - 2 * x.slope * y.flat * x.slopeUnder * y.flatUnder
                        - 2 * x.flat * y.slope * x.flatUnder * y.slopeUnder
                        + square(x.flat * y.flat) * flat * flat
                        + square(x.slope * y.flat) * slope * flat
                        + square(x.flat * y.slope) * flat * slope;
            }
        }
        return sum / (cells.length * cells.length) / whole;
    }

    private static double square(double x) {
        return x * x;
    }

    private static double[][] modes() {
        double[][] modes = new double[2][SIDE];
        double norm = Math.sqrt(SIDE * (SIDE * SIDE - 1) / 12.0);
        for (int i = 0; i < SIDE; i++) {
            modes[0][i] = 1 / Math.sqrt(SIDE);
            modes[1][i] = (i - (SIDE - 1) / 2.0) / norm;
        }
        return modes;
    }

    /** The vector times the noise's covariance, exp(-d² / 4 σ²) at distance d; as it is for no smoothing. */
    private static double[] under(double[] vector, double sigma) {
        double[] out = new double[SIDE];
        for (int i = 0; i < SIDE; i++) {
            for (int j = 0; j < SIDE; j++) {
                out[i] += vector[j] * covariance(i - j, sigma);
            }
        }
        return out;
    }

    private static double covariance(int apart, double sigma) {
        return apart == 0 ? 1 : Math.exp(-apart * apart / (4 * Math.max(1e-6, sigma * sigma)));
    }

    private static double mean(double[] vector, int from, int size) {
        double sum = 0;
        for (int i = from; i < from + size; i++) {
            sum += vector[i] / size;
        }
        return sum;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Variance of means over {@code size} px over that of single pixels, before anything is taken off. */
    static double ofMeans(double sigma, int size) {
        double alone = new PlaneLoss(sigma, size).alone;
        return alone * alone;
    }
}
