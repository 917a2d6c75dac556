package noctuary.effect;

import java.util.Arrays;

/**
 * The straight line y = base + height x by weighted least squares; a point that is far off counts little more than one
 * somewhat off.
 *
 * @param misfit sum over the points of ln(1 + (off / sigma / 4.685)²)
 */
record RobustLine(double base, double height, double misfit) {
    private static final double TUKEY = 4.685;
    private static final int ROUNDS = 4;

    static RobustLine of(double[] x, double[] y, double[] sigma) {
        double[] robust = new double[x.length];
        Arrays.fill(robust, 1);
        RobustLine line = null;
        for (int round = 0; round < ROUNDS; round++) {
            line = leastSquares(x, y, sigma, robust);
            for (int k = 0; k < robust.length; k++) {
                robust[k] = 1 / (1 + line.scaledSquare(x[k], y[k], sigma[k]));
            }
        }
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += Math.log1p(line.scaledSquare(x[k], y[k], sigma[k]));
        }
        return new RobustLine(line.base, line.height, sum);
    }

    private double scaledSquare(double x, double y, double sigma) {
        double scaled = (y - base - height * x) / sigma / TUKEY;
        return scaled * scaled;
    }

    private static RobustLine leastSquares(double[] x, double[] y, double[] sigma, double[] robust) {
        double sum = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (int k = 0; k < x.length; k++) {
            double w = robust[k] / (sigma[k] * sigma[k]);
            sum += w;
            sx += w * x[k];
            sy += w * y[k];
            sxx += w * x[k] * x[k];
            sxy += w * x[k] * y[k];
        }
        double height = (sum * sxy - sx * sy) / (sum * sxx - sx * sx);
        return new RobustLine((sy - height * sx) / sum, height, 0);
    }
}
