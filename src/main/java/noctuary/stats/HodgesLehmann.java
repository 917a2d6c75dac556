package noctuary.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Shifts that a few wild values do not move (Hodges &amp; Lehmann 1963, Ann. Math. Stat. 34, 598). */
public final class HodgesLehmann {
    private HodgesLehmann() {}

    private record Weighted(double value, double weight) {}

    /**
     * Shift of after over before, within blocks: the weighted median of the differences after - before inside each
     * block of N values, weight 12 / (N + 1) (van Elteren 1960), and of the Walsh averages of the blocks that are
     * pairs. One block alone: the median of all differences. Pairs alone: the median of their Walsh averages.
     *
     * <p>The n pairs' averages weigh 24 ((n - 1) / √2 + 1) / ((n + 1) (2 n + 1)): slope over variance of the signed
     * rank statistic for normal values, on the scale where a block's weight is 12 / (N + 1); n = 1 gives the same 4 as
     * that.
     *
     * @throws IllegalArgumentException for no blocks
     */
    public static double shift(List<Block> blocks) {
        if (blocks.isEmpty()) {
            throw new IllegalArgumentException("no blocks");
        }
        List<Weighted> points = new ArrayList<>();
        List<Double> paired = new ArrayList<>();
        for (Block block : blocks) {
            if (block.isPair()) {
                paired.add(block.after()[0] - block.before()[0]);
            } else {
                add(points, differences(block.after(), block.before()), 12.0 / (block.size() + 1));
            }
        }
        int n = paired.size();
        double weight = 24 * ((n - 1) / Math.sqrt(2) + 1) / ((n + 1.0) * (2 * n + 1));
        add(points, walsh(paired.stream().mapToDouble(d -> d).toArray()), weight);
        return weightedMedian(points);
    }

    /** All x - y, ascending. */
    static double[] differences(double[] x, double[] y) {
        double[] all = new double[x.length * y.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = x[i / y.length] - y[i % y.length];
        }
        Arrays.sort(all);
        return all;
    }

    /** All means of two, each value with itself too, ascending. */
    static double[] walsh(double[] values) {
        double[] all = new double[values.length * (values.length + 1) / 2];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            for (int j = i; j < values.length; j++) {
                all[count++] = (values[i] + values[j]) / 2;
            }
        }
        Arrays.sort(all);
        return all;
    }

    private static void add(List<Weighted> points, double[] values, double weight) {
        Arrays.stream(values).forEach(v -> points.add(new Weighted(v, weight)));
    }

    private static double weightedMedian(List<Weighted> points) {
        points.sort(Comparator.comparingDouble(Weighted::value));
        double half = points.stream().mapToDouble(Weighted::weight).sum() / 2;
        double sum = 0;
        for (int i = 0; i < points.size(); i++) {
            sum += points.get(i).weight();
            if (Math.abs(sum - half) < 1e-9 * half && i + 1 < points.size()) {
                return (points.get(i).value() + points.get(i + 1).value()) / 2;
            }
            if (sum > half) {
                return points.get(i).value();
            }
        }
        return points.get(points.size() - 1).value();
    }
}
