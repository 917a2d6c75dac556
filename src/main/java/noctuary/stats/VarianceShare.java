package noctuary.stats;

import java.util.Arrays;
import java.util.List;

/**
 * How alike the values of one group are: one-way analysis of variance.
 *
 * @param between sum of squares of the group means about the grand mean, each times its count
 * @param within sum of squares inside the groups
 * @param f between over within, each over its degrees of freedom
 * @param intraclass correlation (MSB - MSW) / (MSB + (m - 1) MSW) with m values a group, for unequal groups m = (N - Σ
 *     m² / N) / (groups - 1) (Fisher 1925; Donner 1986)
 */
public record VarianceShare(double between, double within, double f, double intraclass) {
    /** @throws IllegalArgumentException for fewer than two groups, or none with two values */
    public static VarianceShare of(List<double[]> groups) {
        double count = groups.stream().mapToInt(g -> g.length).sum();
        double free = count - groups.size();
        if (groups.size() < 2 || free < 1) {
            throw new IllegalArgumentException("needs two groups, and two values in one of them");
        }
        double origin = groups.get(0)[0];
        double grand = groups.stream()
                        .flatMapToDouble(Arrays::stream)
                        .map(v -> v - origin)
                        .sum()
                / count;
        double between = 0;
        double within = 0;
        double sizes = 0;
        for (double[] group : groups) {
            double mean = Arrays.stream(group).map(v -> v - origin).average().orElseThrow();
            between += group.length * (mean - grand) * (mean - grand);
            within += Arrays.stream(group)
                    .map(v -> v - origin - mean)
                    .map(d -> d * d)
                    .sum();
            sizes += (double) group.length * group.length;
        }
        double m = (count - sizes / count) / (groups.size() - 1);
        double meanBetween = between / (groups.size() - 1);
        double meanWithin = within / free;
        double correlation = (meanBetween - meanWithin) / (meanBetween + (m - 1) * meanWithin);
        return new VarianceShare(between, within, meanBetween / meanWithin, correlation);
    }

    /** By how much {@code m} values a group overstate what they tell about its mean: 1 + (m - 1) ICC (Kish 1965). */
    public static double designEffect(double m, double intraclass) {
        return 1 + (m - 1) * intraclass;
    }
}
