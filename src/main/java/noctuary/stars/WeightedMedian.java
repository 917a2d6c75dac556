package noctuary.stars;

import java.util.Comparator;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * Median in which each value weighs by one over its standard deviation, the values' own spread included: the weights
 * that make the median of normal values most certain. Its standard error is then sqrt(pi n / 2) over their sum.
 */
record WeightedMedian(double value, double error) {
    static WeightedMedian of(double[] value, double[] error) {
        int n = value.length;
        double[] zero = new double[n];
        double own = n < 5 ? 0 : Surface.fit(zero, zero, value, error, 1).ownVariance();
        double[] weight = new double[n];
        double total = 0;
        for (int i = 0; i < n; i++) {
            weight[i] = 1 / Math.sqrt(error[i] * error[i] + own);
            total += weight[i];
        }
        if (n < 3) {
            return new WeightedMedian(Robust.median(value), Math.sqrt(n) / total);
        }
        return new WeightedMedian(middle(value, weight, total), Math.sqrt(Math.PI * n / 2) / total);
    }

    /** The p-quantile by weights of one over {@code error}, {@code floor} added in quadrature. */
    static double quantile(double p, double[] value, double[] error, double floor) {
        double[] weight = new double[value.length];
        double total = 0;
        for (int i = 0; i < weight.length; i++) {
            weight[i] = 1 / Math.hypot(error[i], floor);
            total += weight[i];
        }
        return middle(value, weight, 2 * p * total);
    }

    /** Where the cumulated weight, counted to the middle of each value's own, crosses one half; linear between. */
    private static double middle(double[] value, double[] weight, double total) {
        int[] order = IntStream.range(0, value.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> value[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double before = 0;
        double reached = Double.NaN;
        for (int k = 0; k < order.length; k++) {
            double w = weight[order[k]];
            double here = before + w / 2;
            if (here >= total / 2) {
                if (k == 0) {
                    return value[order[0]];
                }
                double share = (total / 2 - reached) / (here - reached);
                return value[order[k - 1]] + share * (value[order[k]] - value[order[k - 1]]);
            }
            reached = here;
            before += w;
        }
        return value[order[order.length - 1]];
    }
}
