package noctuary.stats;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * y = b0 + Σ b_j x_j by least squares. Columns are centred and brought to unit length, then solved by QR, so that years
 * and incomes side by side lose no digits; the intercept follows from the means.
 *
 * @param coefficients intercept first
 * @param standardErrors in the same order
 * @param residualSd √(residual sum of squares / df)
 * @param df values minus coefficients
 */
public record Regression(double[] coefficients, double[] standardErrors, double residualSd, int df, double rSquared) {
    /** A direction that holds less than this share of a column's length counts as none. */
    private static final double SINGULAR = 1e-10;

    /**
     * @param columns one array of values for each x
     * @throws IllegalArgumentException when columns depend on one another, or leave no degree of freedom
     */
    public static Regression of(double[] y, double[]... columns) {
        int df = y.length - columns.length - 1;
        if (df < 1) {
            throw new IllegalArgumentException(y.length + " values for " + (columns.length + 1) + " coefficients");
        }
        double[] means = Arrays.stream(columns).mapToDouble(StudentTest::mean).toArray();
        double[] lengths = new double[columns.length];
        RealMatrix x = new Array2DRowRealMatrix(y.length, columns.length);
        for (int j = 0; j < columns.length; j++) {
            double[] centred = centred(columns[j], means[j]);
            lengths[j] = Math.sqrt(squares(centred));
            x.setColumnVector(j, new ArrayRealVector(centred).mapDivide(lengths[j]));
        }
        return solved(y, x, means, lengths, df);
    }

    /** As {@link #of}; empty where that refuses. */
    public static Optional<Regression> find(double[] y, double[]... columns) {
        try {
            return Optional.of(of(y, columns));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static Regression solved(double[] y, RealMatrix x, double[] means, double[] lengths, int df) {
        QRDecomposition qr = new QRDecomposition(x, SINGULAR);
        if (!qr.getSolver().isNonSingular() || Arrays.stream(lengths).anyMatch(l -> l == 0)) {
            throw new IllegalArgumentException("columns depend on one another");
        }
        RealVector centred = new ArrayRealVector(centred(y, StudentTest.mean(y)));
        RealVector scaled = qr.getSolver().solve(centred);
        double left = squares(centred.subtract(x.operate(scaled)).toArray());
        double sd = Math.sqrt(left / df);
        RealMatrix inverse = inverse(qr, means.length);
        RealMatrix covariance = inverse.multiplyTransposed(inverse);
        double[] coefficients = new double[means.length + 1];
        double[] errors = new double[means.length + 1];
        double[] back = new double[means.length];
        coefficients[0] = StudentTest.mean(y);
        for (int j = 0; j < means.length; j++) {
            coefficients[j + 1] = scaled.getEntry(j) / lengths[j];
            errors[j + 1] = sd * Math.sqrt(covariance.getEntry(j, j)) / lengths[j];
            coefficients[0] -= coefficients[j + 1] * means[j];
            back[j] = means[j] / lengths[j];
        }
        RealVector pull = new ArrayRealVector(back);
        errors[0] = sd * Math.sqrt(1.0 / y.length + pull.dotProduct(covariance.operate(pull)));
        return new Regression(coefficients, errors, sd, df, 1 - left / squares(centred.toArray()));
    }

    /** What coefficient {@code j} is, with its test against zero and its 95 % interval; 0 is the intercept. */
    public StudentTest coefficient(int j) {
        return StudentTest.of(coefficients[j], standardErrors[j], df);
    }

    private static RealMatrix inverse(QRDecomposition qr, int size) {
        RealMatrix r = qr.getR().getSubMatrix(0, size - 1, 0, size - 1);
        return new QRDecomposition(r).getSolver().getInverse();
    }

    private static double[] centred(double[] values, double mean) {
        return Arrays.stream(values).map(v -> v - mean).toArray();
    }

    private static double squares(double[] values) {
        return Arrays.stream(values).map(v -> v * v).sum();
    }
}
