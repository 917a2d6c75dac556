package noctuary.stars;

import java.util.Arrays;
import noctuary.stats.Robust;

/**
 * A polynomial over the field by weighted least squares with Huber weights: 1, x, y, x², xy, y² in coordinates that run
 * from -1 to 1 over each axis; only as many terms as asked for (1, 3 or 6).
 *
 * @param coefficient in the order above
 * @param covariance row by row; scaled up where the scatter exceeds the errors given
 */
record Surface(double[] coefficient, double[] covariance, double ownVariance) {
    private static final double HUBER = 1.5;
    /** Mean of the squares of a normal variable when those over 4 count as 4. */
    private static final double CUT_SQUARE = 0.920537;

    int terms() {
        return coefficient.length;
    }

    double at(double x, double y) {
        double[] basis = basis(x, y, terms());
        double sum = 0;
        for (int i = 0; i < terms(); i++) {
            sum += coefficient[i] * basis[i];
        }
        return sum;
    }

    /** A linear combination of the coefficients. */
    double combined(double[] combination) {
        return dot(coefficient, combination);
    }

    /** Variance of {@link #at}. */
    double varianceAt(double x, double y) {
        return varianceOf(basis(x, y, terms()));
    }

    /** Variance of a linear combination of the coefficients. */
    double varianceOf(double[] combination) {
        double sum = 0;
        for (int i = 0; i < terms(); i++) {
            for (int j = 0; j < terms(); j++) {
                sum += combination[i] * combination[j] * covariance[i * terms() + j];
            }
        }
        return sum;
    }

    static double[] basis(double x, double y, int terms) {
        return Arrays.copyOf(new double[] {1, x, y, x * x, x * y, y * y}, terms);
    }

    /** Terms that so many points carry: 6 from 30 on, 3 from 10 on, else 1. */
    static int termsFor(int points) {
        return points >= 30 ? 6 : points >= 10 ? 3 : 1;
    }

    /** Fits values with standard errors; a spread of their own is found and added to the errors. */
    static Surface fit(double[] x, double[] y, double[] value, double[] error, int terms) {
        int n = value.length;
        double[] coefficient = new double[terms];
        double[] covariance = new double[terms * terms];
        coefficient[0] = Robust.median(value);
        double own = 0;
        double[][] bases = bases(x, y, terms);
        double[] residual = new double[n];
        for (int pass = 0; pass < 12; pass++) {
            leave(value, coefficient, bases, residual);
            own = ownVariance(residual, error, terms);
            double[] matrix = new double[terms * terms];
            double[] right = new double[terms];
            for (int i = 0; i < n; i++) {
                addTo(matrix, right, bases[i], weight(residual[i], error[i] * error[i] + own), value[i]);
            }
            if (!Cholesky.factor(matrix, terms)) {
                return new Surface(coefficient, covariance, own);
            }
            Cholesky.solve(matrix, terms, right);
            boolean still = still(coefficient, right, matrix, terms);
            coefficient = right;
            for (int j = 0; j < terms; j++) {
                System.arraycopy(Cholesky.inverseColumn(matrix, terms, j), 0, covariance, j * terms, terms);
            }
            if (still) {
                break;
            }
        }
        return new Surface(coefficient, covariance, own);
    }

    private static double[][] bases(double[] x, double[] y, int terms) {
        double[][] bases = new double[x.length][];
        for (int i = 0; i < bases.length; i++) {
            bases[i] = basis(x[i], y[i], terms);
        }
        return bases;
    }

    private static void leave(double[] value, double[] coefficient, double[][] bases, double[] residual) {
        for (int i = 0; i < value.length; i++) {
            residual[i] = value[i] - dot(coefficient, bases[i]);
        }
    }

    private static double weight(double residual, double variance) {
        double z = Math.abs(residual) / Math.sqrt(variance);
        return Math.min(1, HUBER / Math.max(1e-12, z)) / variance;
    }

    private static boolean still(double[] before, double[] now, double[] factor, int terms) {
        for (int i = 0; i < terms; i++) {
            double error = Math.sqrt(Cholesky.inverseColumn(factor, terms, i)[i]);
            if (Math.abs(now[i] - before[i]) > 0.01 * error) {
                return false;
            }
        }
        return true;
    }

    /**
     * Spread beyond the errors: the amount that brings the mean square, cut at 2 sigma, to that of a normal
     * distribution.
     */
    private static double ownVariance(double[] residual, double[] error, int terms) {
        int n = residual.length;
        if (n < terms + 3) {
            return 0;
        }
        double wanted = CUT_SQUARE * (n - terms);
        double low = 0;
        double high = Arrays.stream(residual).map(r -> r * r).max().orElse(0);
        if (cutSquares(residual, error, 0) <= wanted) {
            return 0;
        }
        for (int pass = 0; pass < 40; pass++) {
            double own = (low + high) / 2;
            if (cutSquares(residual, error, own) > wanted) {
                low = own;
            } else {
                high = own;
            }
        }
        return high;
    }

    private static double cutSquares(double[] residual, double[] error, double own) {
        double sum = 0;
        for (int i = 0; i < residual.length; i++) {
            sum += Math.min(4, residual[i] * residual[i] / (error[i] * error[i] + own + 1e-300));
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void addTo(double[] matrix, double[] right, double[] basis, double weight, double value) {
        int n = basis.length;
        for (int i = 0; i < n; i++) {
            right[i] += weight * basis[i] * value;
            for (int j = 0; j < n; j++) {
                matrix[i * n + j] += weight * basis[i] * basis[j];
            }
        }
    }
}
