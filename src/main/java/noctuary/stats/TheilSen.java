package noctuary.stats;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * A straight line through points that a few outliers do not move: the slope is the median of the slopes between all
 * pairs (Theil 1950), the intercept is median(y) - slope median(x), the interval is Sen's (1968, JASA 63, 1379) for 95
 * %, from the normal approximation of Kendall's statistic with ties. With four points it spans all pairs.
 *
 * @param low lower end of the interval of the slope
 * @param high upper end
 */
public record TheilSen(double slope, double intercept, double low, double high) {
    /** 0.975 quantile of the normal distribution. */
    private static final double Z = 1.959963984540054;

    /**
     * All NaN when fewer than two points differ in {@code x}.
     *
     * @throws IllegalArgumentException for arrays of different length
     */
    public static TheilSen fit(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " x, but " + y.length + " y");
        }
        double[] slopes = slopes(x, y);
        if (slopes.length == 0) {
            return new TheilSen(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        double slope = Robust.quantileOfSorted(slopes, 0.5);
        int all = slopes.length;
        double reach = Z * Math.sqrt(kendallVariance(x, y));
        int low = (int) Math.max(Math.rint((all - reach) / 2) - 1, 0);
        int high = (int) Math.min(Math.rint((all + reach) / 2), all - 1);
        return new TheilSen(slope, Robust.median(y) - slope * Robust.median(x), slopes[low], slopes[high]);
    }

    public double at(double x) {
        return intercept + slope * x;
    }

    /** Whether the whole interval lies above zero. */
    public boolean rises() {
        return low > 0;
    }

    public boolean falls() {
        return high < 0;
    }

    private static double[] slopes(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        double[] sorted = Arrays.copyOf(slopes, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static double kendallVariance(double[] x, double[] y) {
        return (term(x.length) - ties(x) - ties(y)) / 18;
    }

    private static double ties(double[] values) {
        Map<Double, Integer> counts = new HashMap<>();
        Arrays.stream(values).forEach(v -> counts.merge(v, 1, Integer::sum));
        return counts.values().stream().mapToDouble(TheilSen::term).sum();
    }

    private static double term(double n) {
        return n * (n - 1) * (2 * n + 5);
    }
}
