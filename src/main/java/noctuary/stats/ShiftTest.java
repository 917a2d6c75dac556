package noctuary.stats;

import java.util.Arrays;
import java.util.List;

/**
 * The mean shift of after over before inside blocks, and what chance relabellings make of it. One block compares two
 * independent samples, blocks of two compare pairs (a sign flip is a relabelling), others lie in between.
 *
 * <p>The statistic is the sum over the after side; the shift, Σ w (mean after - mean before) / Σ w with w = m n / (m + n)
 * of each block. Each relabelling g that swaps k labels is as extreme as the true one for a shift of exactly loss_g / k:
 * these typical values cut the line into pieces that hold the true shift with equal probability (Hartigan 1969, JASA 64,
 * 1303; Tritchler 1984, JASA 79, 200), also for a random selection of relabellings. The interval runs between the values
 * that cut off α/2 on each side, interpolated linearly between neighbours; when there are too few of them, between the
 * outermost, with the coverage that has.
 *
 * @param pOfSize share of the relabellings whose statistic is at least as far from its mean
 * @param p twice the smaller tail; below α just when the interval at 1 - α leaves out zero (but for interpolation)
 * @param smallestP what p could at best have been
 * @param relabellings compared, the true labels included
 * @param exact whether these were all
 */
public record ShiftTest(
        double shift,
        double low,
        double high,
        double coverage,
        double p,
        double pOfSize,
        double smallestP,
        int relabellings,
        boolean exact) {
    /** Sums that differ by less than this share of the largest are equal but for rounding. */
    private static final double ROUNDING = 1e-11;

    /**
     * @param level wanted of the interval, such as 0.95
     * @throws IllegalArgumentException for no blocks
     */
    public static ShiftTest of(List<Block> blocks, double level, long seed) {
        if (blocks.isEmpty()) {
            throw new IllegalArgumentException("no blocks");
        }
        Relabellings labels = Relabellings.of(blocks, seed);
        double weight = blocks.stream().mapToDouble(Block::weight).sum();
        double shift = blocks.stream().mapToDouble(ShiftTest::weighted).sum() / weight;
        double[] typical = typical(labels);
        int all = labels.losses().length;
        double rank = Math.max((1 - level) / 2 * all, 1);
        boolean any = typical.length > 0;
        return new ShiftTest(
                shift,
                any ? ordered(typical, rank) : Double.NEGATIVE_INFINITY,
                any ? ordered(typical, typical.length + 1 - rank) : Double.POSITIVE_INFINITY,
                1 - 2 * rank / all,
                tails(labels),
                ofSize(labels, shift * weight),
                smallestP(blocks),
                all,
                labels.exact());
    }

    /** The smallest two-sided p that the numbers on both sides allow. */
    public static double smallestP(List<Block> blocks) {
        double all = 1;
        for (Block block : blocks) {
            all *= block.relabellings();
        }
        return Math.min(1, 2 / all);
    }

    private static double weighted(Block block) {
        double after = Arrays.stream(block.after()).average().orElseThrow();
        return block.weight() * (after - Arrays.stream(block.before()).average().orElseThrow());
    }

    private static double[] typical(Relabellings labels) {
        double[] values = new double[labels.losses().length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (labels.swaps()[i] > 0) {
                values[count++] = labels.losses()[i] / labels.swaps()[i];
            }
        }
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        return sorted;
    }

    /** The value of a rank from 1, between two ranks in proportion. */
    private static double ordered(double[] sorted, double rank) {
        double place = Math.min(Math.max(rank - 1, 0), sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static double tails(Relabellings labels) {
        double slack = slack(labels);
        long above = Arrays.stream(labels.losses()).filter(l -> l <= slack).count();
        long below = Arrays.stream(labels.losses()).filter(l -> l >= -slack).count();
        return Math.min(1, 2.0 * Math.min(above, below) / labels.losses().length);
    }

    private static double ofSize(Relabellings labels, double statistic) {
        double slack = slack(labels);
        return Arrays.stream(labels.losses())
                        .filter(l -> Math.abs(statistic - l) >= Math.abs(statistic) - slack)
                        .count()
                / (double) labels.losses().length;
    }

    private static double slack(Relabellings labels) {
        return ROUNDING * Arrays.stream(labels.losses()).map(Math::abs).max().orElse(0);
    }
}
