package noctuary.stats;

import java.util.Arrays;

/** Location and scale that a few outliers do not move. NaN among the values is not allowed. */
public final class Robust {
    /** Median absolute deviation to standard deviation for a normal distribution, 1 / Φ⁻¹(3/4). */
    public static final double MAD_TO_SIGMA = 1.482602218505602;

    /** Standard error of a median of normal values over that of their mean, sqrt(π / 2). */
    private static final double MEDIAN_OVER_MEAN = Math.sqrt(Math.PI / 2);

    private Robust() {}

    /** The median; NaN for no values. */
    public static double median(double... values) {
        return quantile(values, 0.5);
    }

    /**
     * The p-quantile with linear interpolation between order statistics (type 7 of Hyndman &amp; Fan 1996); NaN for no
     * values.
     */
    public static double quantile(double[] values, double p) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return quantileOfSorted(sorted, p);
    }

    /** As {@link #quantile}, for values already in ascending order. */
    public static double quantileOfSorted(double[] sorted, double p) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double h = (sorted.length - 1) * p;
        int below = (int) Math.floor(h);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (h - below) * (sorted[above] - sorted[below]);
    }

    /** Standard deviation estimated from the median absolute deviation about the median; NaN for no values. */
    public static double sigma(double... values) {
        double centre = median(values);
        return MAD_TO_SIGMA
                * median(Arrays.stream(values).map(v -> Math.abs(v - centre)).toArray());
    }

    /**
     * Standard error of the median of values that scatter normally: sqrt(π / 2) sigma / sqrt(N), sigma as in
     * {@link #sigma}; NaN for no values.
     */
    public static double medianError(double... values) {
        return MEDIAN_OVER_MEAN * sigma(values) / Math.sqrt(values.length);
    }
}
