package noctuary.stars;

import java.util.Arrays;
import noctuary.stats.Robust;
import noctuary.stats.Strays;

/**
 * The surface on which most values lie while some stray above it, as close pairs and clumps of nebula lie above the
 * width of stars: maximum likelihood of {@link Strays} about a polynomial, by expectation and maximisation (Dempster,
 * Laird &amp; Rubin 1977) from a start of least absolute deviations that the most certain values dominate.
 */
final class Locus {
    private static final int START_PASSES = 25;
    private static final int MOST_PASSES = 300;
    /** Change over the standard error at which a coefficient rests. */
    private static final double STILL = 0.003;
    /** Strays of less than this many typical errors cannot be told from noise. */
    private static final double LEAST_REACH = 2;
    /** Weight of the expectation that none strays, in values. */
    private static final double DOUBT = 1;

    private final double[][] basis;
    private final double[] value;
    private final double[] error;
    private final int n;
    private final int terms;
    private final double leastReach;
    private final double[] score;
    private final double[] sigma;
    private double[] coefficient;
    private double own;
    private Strays strays;

    private Locus(double[][] basis, double[] value, double[] error, double floor) {
        this.basis = basis;
        this.value = value;
        this.error = error;
        this.n = value.length;
        this.terms = basis[0].length;
        this.score = new double[n];
        this.sigma = new double[n];
        this.coefficient = start(floor);
        double[] residual = residuals();
        this.own = Math.pow(Robust.quantile(absolute(residual), 0.3) / 0.385, 2) / 4;
        this.leastReach = LEAST_REACH * Robust.median(error);
        this.strays = new Strays(0.15, Math.max(leastReach, 2 * Robust.sigma(residual)));
    }

    /**
     * @param basis of each value, row after row
     * @param floor deviation that is nothing to the start
     */
    static Surface fit(double[][] basis, double[] value, double[] error, double floor) {
        return new Locus(basis, value, error, floor).run();
    }

    private Surface run() {
        double[] covariance = new double[terms * terms];
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] matrix = expect();
            if (!Cholesky.factor(matrix, terms)) {
                break;
            }
            double[] move = new double[terms];
            for (int i = 0; i < n; i++) {
                for (int t = 0; t < terms; t++) {
                    move[t] += basis[i][t] * score[i];
                }
            }
            Cholesky.solve(matrix, terms, move);
            boolean still = true;
            for (int t = 0; t < terms; t++) {
                coefficient[t] += move[t];
                still &= Math.abs(move[t]) < STILL * Math.sqrt(Cholesky.inverseColumn(matrix, terms, t)[t]);
            }
            if (still && pass > 5) {
                break;
            }
        }
        expect();
        double[] known = information();
        if (Cholesky.factor(known, terms)) {
            for (int t = 0; t < terms; t++) {
                System.arraycopy(Cholesky.inverseColumn(known, terms, t), 0, covariance, t * terms, terms);
            }
        }
        return new Surface(coefficient, covariance, own);
    }

    /** Scores of all values at the present place, then share, reach and spread anew; returns the normal matrix. */
    private double[] expect() {
        double[] residual = residuals();
        double[] matrix = new double[terms * terms];
        double chances = 0;
        double amounts = 0;
        double up = 0;
        double down = 0;
        for (int i = 0; i < n; i++) {
            double variance = error[i] * error[i] + own;
            sigma[i] = Math.sqrt(variance);
            Strays.Expected e = strays.of(residual[i], sigma[i]);
            double left = residual[i] - e.mean();
            score[i] = left / variance;
            double square = (1 - e.chance()) * residual[i] * residual[i]
                    + e.chance() * (Math.pow(residual[i] - e.amount(), 2) + e.variance());
            chances += e.chance();
            amounts += e.mean();
            up += square / (variance * variance);
            down += 1 / variance;
            addProducts(basis[i], 1 / variance, matrix);
        }
        own = own * up / down * n / Math.max(1.0, n - terms);
        strays = new Strays(
                Math.max(1e-6, Math.min(0.7, chances / (n + DOUBT))), Math.max(leastReach, amounts / chances));
        return matrix;
    }

    /**
     * The information that the values hold on the coefficients: what it were if it was known which stray and how far,
     * less what is missing for not knowing it (Louis 1982, J. R. Stat. Soc. B 44, 226).
     */
    private double[] information() {
        double[] residual = residuals();
        double[] sum = new double[terms * terms];
        for (int i = 0; i < n; i++) {
            Strays.Expected e = strays.of(residual[i], sigma[i]);
            double variance = sigma[i] * sigma[i];
            addProducts(basis[i], (1 - e.spread() / variance) / variance, sum);
        }
        return sum;
    }

    private void addProducts(double[] row, double weight, double[] sum) {
        for (int a = 0; a < terms; a++) {
            for (int b = 0; b < terms; b++) {
                sum[a * terms + b] += weight * row[a] * row[b];
            }
        }
    }

    private double[] residuals() {
        double[] residual = new double[n];
        for (int i = 0; i < n; i++) {
            residual[i] = value[i];
            for (int t = 0; t < terms; t++) {
                residual[i] -= coefficient[t] * basis[i][t];
            }
        }
        return residual;
    }

    private static double[] absolute(double[] residual) {
        return Arrays.stream(residual).map(Math::abs).toArray();
    }

    private double[] start(double floor) {
        coefficient = new double[terms];
        coefficient[0] = WeightedMedian.plain(value, error, floor);
        for (int pass = 0; pass < START_PASSES; pass++) {
            double[] residual = residuals();
            double[] matrix = new double[terms * terms];
            double[] right = new double[terms];
            for (int i = 0; i < n; i++) {
                double s = Math.hypot(error[i], floor);
                double w = 1 / (s * Math.max(Math.abs(residual[i]), 0.1 * s));
                addProducts(basis[i], w, matrix);
                for (int t = 0; t < terms; t++) {
                    right[t] += w * basis[i][t] * value[i];
                }
            }
            if (!Cholesky.factor(matrix, terms)) {
                break;
            }
            Cholesky.solve(matrix, terms, right);
            coefficient = right;
        }
        return coefficient;
    }
}
