package noctuary.stats;

import java.util.Arrays;

/**
 * Two independent samples compared by ranks (Wilcoxon 1945; Mann &amp; Whitney 1947).
 *
 * <p>The shift is the median of all differences x - y (Hodges &amp; Lehmann 1963). The interval runs between order
 * statistics of those differences, D(q) and D(mn + 1 - q), q the smallest u ≥ 1 with P(U ≤ u) ≥ α/2; its coverage, 1 - 2
 * P(U ≤ q - 1), is exact without ties and at least that with them (Hollander &amp; Wolfe, Nonparametric Statistical
 * Methods, section 4.3).
 *
 * @param u number of pairs with x above y, ties half
 * @param p two-sided, twice the smaller tail of the permutation distribution of the (mid)ranks
 * @param shift of x over y
 * @param coverage what the interval truly reaches
 */
public record RankSum(double u, double p, double shift, double low, double high, double coverage) {
    /**
     * @param level wanted of the interval, such as 0.95
     * @throws IllegalArgumentException for an empty side
     */
    public static RankSum of(double[] x, double[] y, double level) {
        if (x.length == 0 || y.length == 0) {
            throw new IllegalArgumentException("one side is empty");
        }
        double[] together = Arrays.copyOf(x, x.length + y.length);
        System.arraycopy(y, 0, together, x.length, y.length);
        int[] ranks = RankCounts.doubledRanks(together);
        int sum = Arrays.stream(ranks, 0, x.length).sum();
        double p = RankCounts.twoSided(RankCounts.ofChoices(ranks, x.length), sum);
        double[] differences = HodgesLehmann.differences(x, y);
        double[] untied = untied(x.length, y.length);
        int q = RankCounts.firstReaching(untied, (1 - level) / 2);
        return new RankSum(
                sum / 2.0 - x.length * (x.length + 1) / 2.0,
                p,
                Robust.quantileOfSorted(differences, 0.5),
                differences[q - 1],
                differences[differences.length - q],
                1 - 2 * RankCounts.below(untied, q - 1));
    }

    /** Distribution of U without ties. */
    static double[] untied(int m, int n) {
        int[] ranks = new int[m + n];
        Arrays.setAll(ranks, i -> i + 1);
        double[] sums = RankCounts.ofChoices(ranks, m);
        int least = m * (m + 1) / 2;
        return Arrays.copyOfRange(sums, least, least + m * n + 1);
    }
}
