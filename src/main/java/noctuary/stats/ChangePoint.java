package noctuary.stats;

import java.util.SplittableRandom;

/**
 * The one place where a series steps from one mean to another, by least squares over all places.
 *
 * @param after how many values stand before the step
 * @param without sum of squares about one mean
 * @param with about the two
 * @param p share of shuffled series, this one included, that a step explains at least as well; the places searched are
 *     part of it
 */
public record ChangePoint(int after, double meanBefore, double meanAfter, double without, double with, double p) {
    /**
     * @param shuffles beside the series itself
     * @throws IllegalArgumentException for fewer than two values
     */
    public static ChangePoint of(double[] series, int shuffles, long seed) {
        if (series.length < 2) {
            throw new IllegalArgumentException("a step needs two values");
        }
        int k = best(series);
        double all = StudentTest.mean(series) * series.length;
        double first = sum(series, k);
        double without = StudentTest.variance(series) * (series.length - 1);
        double gain = gain(first, all, k, series.length);
        SplittableRandom random = new SplittableRandom(seed);
        double[] shuffled = series.clone();
        int asGood = 1;
        for (int i = 0; i < shuffles; i++) {
            shuffle(shuffled, random);
            int at = best(shuffled);
            asGood += gain(sum(shuffled, at), all, at, series.length) >= gain * (1 - 1e-12) ? 1 : 0;
        }
        return new ChangePoint(
                k, first / k, (all - first) / (series.length - k), without, without - gain, asGood / (shuffles + 1.0));
    }

    private static int best(double[] series) {
        double all = sum(series, series.length);
        double running = 0;
        double most = Double.NEGATIVE_INFINITY;
        int best = 1;
        for (int k = 1; k < series.length; k++) {
            running += series[k - 1];
            double gain = gain(running, all, k, series.length);
            if (gain > most) {
                most = gain;
                best = k;
            }
        }
        return best;
    }

    /** What two means take off the sum of squares: k (n - k) / n (mean before - mean after)². */
    private static double gain(double first, double all, int k, int n) {
        double step = first / k - (all - first) / (n - k);
        return (double) k * (n - k) / n * step * step;
    }

    private static double sum(double[] series, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += series[i];
        }
        return sum;
    }

    private static void shuffle(double[] values, SplittableRandom random) {
        for (int i = values.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double swap = values[i];
            values[i] = values[j];
            values[j] = swap;
        }
    }
}
