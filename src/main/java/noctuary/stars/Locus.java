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
    private static final double LEAST_REACH = 4;
    /** Weight of the expectation that none strays, in values. */
    private static final double DOUBT = 1;

    private static final double LEAST_SPREAD = 1 / 15.0;
    private static final double MOST_SHARE = 0.9;
    /** Values further below than so many standard deviations count as if they lay there: nothing strays downwards. */
    private static final double LOWEST = 4;
    /** Share of strays from which the fit is tried from below as well. */
    private static final double MANY = 0.25;

    private final double[][] basis;
    private final double[] value;
    private final double[] error;
    private final int n;
    private final int terms;
    private final double least;
    private final double leastReach;
    private final double[] score;
    private final double[] sigma;
    private double[] coefficient;
    private double own;
    private Strays strays;

    private Locus(double[][] basis, double[] value, double[] error, double alike) {
        this.basis = basis;
        this.value = value;
        this.error = error;
        this.n = value.length;
        this.terms = basis[0].length;
        this.score = new double[n];
        this.sigma = new double[n];
        this.least = Math.pow(LEAST_SPREAD * alike, 2);
        this.leastReach = LEAST_REACH * Math.hypot(Robust.median(error), Math.sqrt(least));
    }

    /**
     * @param basis of each value, row after row
     * @param alike deviation that is nothing to the start; a fifteenth of it is the least spread of any values
     */
    static Surface fit(double[][] basis, double[] value, double[] error, double alike) {
        Locus middle = new Locus(basis, value, error, alike);
        middle.start(0.5, alike);
        middle.own = Math.max(middle.least, Math.pow(Robust.quantile(absolute(middle.residuals()), 0.3) / 0.77, 2));
        middle.run(0.15);
        if (middle.strays.share() < MANY) {
            return middle.surface();
        }
        Locus low = new Locus(basis, value, error, alike);
        low.start(0.15, alike);
        low.own = alike * alike;
        low.run(0.6);
        return (low.likelihood() > middle.likelihood() ? low : middle).surface();
    }

    private void run(double share) {
        strays = new Strays(share, Math.max(leastReach, 2 * Robust.sigma(residuals())));
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double[] matrix = expect();
            if (!Cholesky.factor(matrix, terms) || still(matrix) && pass > 5) {
                return;
            }
        }
    }

    /** Moves the coefficients; whether they moved by less than matters. */
    private boolean still(double[] factor) {
        double[] move = new double[terms];
        for (int i = 0; i < n; i++) {
            for (int t = 0; t < terms; t++) {
                move[t] += basis[i][t] * score[i];
            }
        }
        Cholesky.solve(factor, terms, move);
        boolean still = true;
        for (int t = 0; t < terms; t++) {
            coefficient[t] += move[t];
            still &= Math.abs(move[t]) < STILL * Math.sqrt(Cholesky.inverseColumn(factor, terms, t)[t]);
        }
        return still;
    }

    private Surface surface() {
        expect();
        double[] known = information();
        double[] covariance = new double[terms * terms];
        if (Cholesky.factor(known, terms)) {
            for (int t = 0; t < terms; t++) {
                System.arraycopy(Cholesky.inverseColumn(known, terms, t), 0, covariance, t * terms, terms);
            }
        }
        return new Surface(coefficient, covariance, own);
    }

    private double likelihood() {
        double[] residual = residuals();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double deviation = Math.sqrt(error[i] * error[i] + own);
            sum += strays.logDensity(Math.max(residual[i], -LOWEST * deviation), deviation);
        }
        return sum;
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
            double off = Math.max(residual[i], -LOWEST * sigma[i]);
            Strays.Expected e = strays.of(off, sigma[i]);
            double left = off - e.mean();
            score[i] = left / variance;
            double square = (1 - e.chance()) * off * off + e.chance() * (Math.pow(off - e.amount(), 2) + e.variance());
            chances += e.chance();
            amounts += e.mean();
            up += square / (variance * variance);
            down += 1 / variance;
            addProducts(basis[i], 1 / variance, matrix);
        }
        own = Math.max(least, own * up / down * n / Math.max(1.0, n - terms));
        strays = new Strays(
                Math.max(1e-6, Math.min(MOST_SHARE, chances / (n + DOUBT))), Math.max(leastReach, amounts / chances));
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

    private void start(double quantile, double floor) {
        coefficient = new double[terms];
        coefficient[0] = WeightedMedian.quantile(quantile, value, error, floor);
        for (int pass = 0; pass < START_PASSES && quantile == 0.5; pass++) {
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
    }
}
