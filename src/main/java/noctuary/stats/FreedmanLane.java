package noctuary.stats;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Whether values differ between two sides at equal conditions, by relabelling what the conditions leave over (Freedman
 * &amp; Lane 1983, J. Bus. Econ. Stat. 1, 292): the values are fitted by blocks and conditions alone, the residuals
 * shuffled inside the blocks, and each time the t of the side is found again with everything fitted. It asks no normal
 * scatter, but is exact only in the limit; for pairs a shuffle is a change of sign.
 */
public final class FreedmanLane {
    /** Shuffles, the true order included. */
    static final int SHUFFLES = 10_000;

    /** Statistics that differ by less than this share are equal but for rounding. */
    private static final double ROUNDING = 1e-9;

    private final double[] side;
    private final double[][] directions;
    private final int[][] members;

    private FreedmanLane(double[] side, double[][] directions, int[][] members) {
        this.side = side;
        this.directions = directions;
        this.members = members;
    }

    /**
     * Two-sided p of no difference between the sides.
     *
     * @param side a number each value has by its side, such as 0 and 1
     * @param conditions an array of values each; they must not depend on each other inside the blocks
     * @param block of each value; values are shuffled inside it
     */
    public static double p(double[] y, double[] side, double[][] conditions, int[] block, long seed) {
        int[][] members = members(block);
        double[][] directions = new double[conditions.length][];
        for (int j = 0; j < directions.length; j++) {
            double[] left = without(Arrays.copyOf(directions, j), centred(conditions[j], members));
            double length = Math.sqrt(dot(left, left));
            directions[j] = Arrays.stream(left).map(v -> v / length).toArray();
        }
        FreedmanLane test = new FreedmanLane(without(directions, centred(side, members)), directions, members);
        return test.share(without(directions, centred(y, members)), new SplittableRandom(seed));
    }

    private double share(double[] residuals, SplittableRandom random) {
        double reached = statistic(residuals) * (1 - ROUNDING);
        int asFar = 1;
        for (int i = 1; i < SHUFFLES; i++) {
            shuffle(residuals, random);
            asFar += statistic(residuals) >= reached ? 1 : 0;
        }
        return (double) asFar / SHUFFLES;
    }

    /** Grows with the size of t: the part of the residuals along the side over what the conditions leave of them. */
    private double statistic(double[] residuals) {
        double along = dot(side, residuals);
        double left = dot(residuals, residuals);
        for (double[] direction : directions) {
            double part = dot(direction, residuals);
            left -= part * part;
        }
        return along * along / left;
    }

    private void shuffle(double[] values, SplittableRandom random) {
        for (int[] places : members) {
            for (int i = places.length - 1; i > 0; i--) {
                int j = places[random.nextInt(i + 1)];
                double swap = values[places[i]];
                values[places[i]] = values[j];
                values[j] = swap;
            }
        }
    }

    private static int[][] members(int[] block) {
        Map<Integer, int[]> members = new LinkedHashMap<>();
        for (int i = 0; i < block.length; i++) {
            int[] so = members.getOrDefault(block[i], new int[0]);
            int[] grown = Arrays.copyOf(so, so.length + 1);
            grown[so.length] = i;
            members.put(block[i], grown);
        }
        return members.values().toArray(int[][]::new);
    }

    private static double[] centred(double[] values, int[][] members) {
        double[] centred = new double[values.length];
        for (int[] places : members) {
            double mean =
                    Arrays.stream(places).mapToDouble(i -> values[i]).average().orElseThrow();
            for (int i : places) {
                centred[i] = values[i] - mean;
            }
        }
        return centred;
    }

    private static double[] without(double[][] directions, double[] values) {
        double[] left = values.clone();
        for (double[] direction : directions) {
            double part = dot(direction, left);
            for (int i = 0; i < left.length; i++) {
                left[i] -= part * direction[i];
            }
        }
        return left;
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }
}
