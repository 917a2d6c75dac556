package noctuary.stats;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A mean difference over its standard error, referred to Student's distribution.
 *
 * @param p two-sided
 * @param low lower end of the 95 % interval
 */
public record StudentTest(
        double difference, double standardError, double t, double df, double p, double low, double high) {
    private static final double TAIL = 0.975;

    /**
     * Two samples of unequal variance: t = (x̄ - ȳ) / √(s₁²/n₁ + s₂²/n₂), degrees of freedom after Satterthwaite (1946)
     * (Welch 1947, Biometrika 34, 28).
     *
     * @throws IllegalArgumentException for fewer than two values on a side
     */
    public static StudentTest welch(double[] x, double[] y) {
        double a = variance(x) / x.length;
        double b = variance(y) / y.length;
        double df = (a + b) * (a + b) / (a * a / (x.length - 1) + b * b / (y.length - 1));
        return of(mean(x) - mean(y), Math.sqrt(a + b), df);
    }

    /**
     * Pairs, by their differences (Student 1908).
     *
     * @throws IllegalArgumentException for fewer than two
     */
    public static StudentTest paired(double[] differences) {
        return of(mean(differences), Math.sqrt(variance(differences) / differences.length), differences.length - 1);
    }

    static StudentTest of(double difference, double error, double df) {
        double t = difference / error;
        double reach = error * quantile(TAIL, df);
        double p = Double.isNaN(t) ? Double.NaN : 2 * new TDistribution(df).cumulativeProbability(-Math.abs(t));
        return new StudentTest(difference, error, t, df, p, difference - reach, difference + reach);
    }

    /** The value that Student's t with that many degrees of freedom stays below with that probability. */
    public static double quantile(double probability, double df) {
        return new TDistribution(df).inverseCumulativeProbability(probability);
    }

    static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    /** With n - 1, in two passes. */
    static double variance(double[] values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("a variance needs two values, not " + values.length);
        }
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1);
    }
}
