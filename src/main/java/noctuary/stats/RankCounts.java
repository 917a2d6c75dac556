package noctuary.stats;

import java.util.Arrays;

/** Distributions of rank statistics over all relabellings, counted exactly; each array holds probabilities. */
final class RankCounts {
    private RankCounts() {}

    /**
     * Distribution of the sum over {@code chosen} of the whole numbers {@code scores}, every choice equally likely;
     * index = sum. Ranks with ties enter doubled, so that they are whole.
     */
    static double[] ofChoices(int[] scores, int chosen) {
        int all = Arrays.stream(scores).sum();
        double[][] ways = new double[chosen + 1][all + 1];
        ways[0][0] = 1;
        int reached = 0;
        for (int i = 0; i < scores.length; i++) {
            reached += scores[i];
            for (int taken = Math.min(i + 1, chosen); taken >= 1; taken--) {
                for (int sum = reached; sum >= scores[i]; sum--) {
                    ways[taken][sum] += ways[taken - 1][sum - scores[i]];
                }
            }
        }
        return normalised(ways[chosen]);
    }

    /** Distribution of the sum of those {@code scores} whose sign is plus, every sign a fair coin; index = sum. */
    static double[] ofSigns(int[] scores) {
        double[] ways = new double[Arrays.stream(scores).sum() + 1];
        ways[0] = 1;
        int reached = 0;
        for (int score : scores) {
            reached += score;
            for (int sum = reached; sum >= 0; sum--) {
                ways[sum] = 0.5 * (ways[sum] + (sum >= score ? ways[sum - score] : 0));
            }
        }
        return ways;
    }

    /** Probability of at most {@code index}. */
    static double below(double[] distribution, int index) {
        double sum = 0;
        for (int i = 0; i <= Math.min(index, distribution.length - 1); i++) {
            sum += distribution[i];
        }
        return sum;
    }

    /** Twice the smaller tail that starts at {@code index}, at most 1. */
    static double twoSided(double[] distribution, int index) {
        double lower = below(distribution, index);
        double upper = 1 - below(distribution, index - 1);
        return Math.min(1, 2 * Math.min(lower, upper));
    }

    /** The smallest index that lower values reach with {@code tail}, at least 1. */
    static int firstReaching(double[] distribution, double tail) {
        double sum = 0;
        for (int i = 0; i < distribution.length; i++) {
            sum += distribution[i];
            if (sum >= tail) {
                return Math.max(i, 1);
            }
        }
        return distribution.length - 1;
    }

    /** Ranks from 1, doubled; equal values share the mean of theirs. */
    static int[] doubledRanks(double[] values) {
        int[] ranks = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            for (double other : values) {
                ranks[i] += other < values[i] ? 2 : other == values[i] ? 1 : 0;
            }
            ranks[i]++;
        }
        return ranks;
    }

    private static double[] normalised(double[] ways) {
        double all = Arrays.stream(ways).sum();
        return Arrays.stream(ways).map(w -> w / all).toArray();
    }
}
