package noctuary.stats;

import java.util.Arrays;

/**
 * Pairs compared by the ranks of their differences (Wilcoxon 1945).
 *
 * <p>The shift is the median of the Walsh averages (d_i + d_j) / 2, i ≤ j (Hodges &amp; Lehmann 1963); the interval runs
 * between their order statistics as in {@link RankSum}, from the distribution of V (Hollander &amp; Wolfe, section 3.3).
 * Zero differences say nothing about direction: they leave p and stay in the shift.
 *
 * @param v sum of the ranks of positive differences
 * @param p two-sided, twice the smaller tail over all signs of the (mid)ranks; 1 when every difference is zero
 * @param coverage what the interval truly reaches
 */
public record SignedRank(double v, double p, double shift, double low, double high, double coverage) {
    /**
     * @param level wanted of the interval, such as 0.95
     * @throws IllegalArgumentException for no differences
     */
    public static SignedRank of(double[] differences, double level) {
        if (differences.length == 0) {
            throw new IllegalArgumentException("no pairs");
        }
        double[] moved = Arrays.stream(differences).filter(d -> d != 0).toArray();
        int[] ranks =
                RankCounts.doubledRanks(Arrays.stream(moved).map(Math::abs).toArray());
        int sum = 0;
        for (int i = 0; i < moved.length; i++) {
            sum += moved[i] > 0 ? ranks[i] : 0;
        }
        double[] walsh = HodgesLehmann.walsh(differences);
        int[] untiedRanks = new int[differences.length];
        Arrays.setAll(untiedRanks, i -> i + 1);
        double[] untied = RankCounts.ofSigns(untiedRanks);
        int q = RankCounts.firstReaching(untied, (1 - level) / 2);
        return new SignedRank(
                sum / 2.0,
                RankCounts.twoSided(RankCounts.ofSigns(ranks), sum),
                Robust.quantileOfSorted(walsh, 0.5),
                walsh[q - 1],
                walsh[walsh.length - q],
                1 - 2 * RankCounts.below(untied, q - 1));
    }
}
