package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/** What must be added to a curve, straight between knots and level beyond them. */
record Bends(double[] at, double[] by) {
    static final Bends NONE = new Bends(new double[0], new double[0]);

    private static final int GROUP = 24;
    private static final int MOST_GROUPS = 24;

    /**
     * Weighted mean misfit of groups of cells of like level.
     *
     * @param off misfit of each cell
     * @param doubts about it
     */
    static Bends of(double[] levels, double[] off, double[] doubts) {
        int[] order = IntStream.range(0, levels.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> levels[k]))
                .mapToInt(Integer::intValue)
                .toArray();
        int groups = Math.min(MOST_GROUPS, Math.max(1, order.length / GROUP));
        List<Double> at = new ArrayList<>();
        List<Double> by = new ArrayList<>();
        for (int g = 0; g < groups; g++) {
            int[] group = Arrays.copyOfRange(order, g * order.length / groups, (g + 1) * order.length / groups);
            double level = Robust.median(
                    Arrays.stream(group).mapToDouble(k -> levels[k]).toArray());
            if (at.isEmpty() || level > at.get(at.size() - 1)) {
                at.add(level);
                by.add(weightedMean(group, off, doubts));
            }
        }
        return new Bends(
                at.stream().mapToDouble(Double::doubleValue).toArray(),
                by.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static double weightedMean(int[] group, double[] off, double[] doubts) {
        double sum = 0;
        double weight = 0;
        for (int k : group) {
            sum += off[k] / (doubts[k] * doubts[k]);
            weight += 1 / (doubts[k] * doubts[k]);
        }
        return sum / weight;
    }

    boolean none() {
        return at.length == 0;
    }

    double at(double x) {
        if (none()) {
            return 0;
        }
        int k = 0;
        while (k < at.length && at[k] < x) {
            k++;
        }
        if (k == 0 || k == at.length) {
            return by[k == 0 ? 0 : k - 1];
        }
        double part = (x - at[k - 1]) / (at[k] - at[k - 1]);
        return by[k - 1] + part * (by[k] - by[k - 1]);
    }
}
