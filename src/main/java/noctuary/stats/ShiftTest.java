package noctuary.stats;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The mean shift of after over before inside blocks, and what chance relabellings make of it. One block compares two
 * independent samples, blocks of two compare pairs (a sign flip is a relabelling), others lie in between.
 *
 * <p>The statistic is the sum over the after side; the shift, Σ w (mean after - mean before) / Σ w with w = m n / (m + n)
 * of each block. Each relabelling g that swaps k labels is as extreme as the true one for a shift of exactly loss_g / k:
 * these typical values cut the line into pieces that hold the true shift with equal probability (Hartigan 1969, JASA 64,
 * 1303; Tritchler 1984, JASA 79, 200), also for a random selection of relabellings. The interval runs between the values
 * that cut off α/2 on each side, interpolated linearly between neighbours; when there are too few of them, between the
 * outermost, with the coverage that has. All relabellings are compared where they can be listed or counted by halves, which
 * twelve values against twelve can; else a random selection.
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
        double relabellings,
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
        double all = relabellings(blocks);
        Labels labels = labels(blocks, all, seed);
        double weight = blocks.stream().mapToDouble(Block::weight).sum();
        double shift = blocks.stream().mapToDouble(ShiftTest::weighted).sum() / weight;
        double rank = Math.max((1 - level) / 2 * labels.count(), 1);
        boolean any = labels.count() > 1;
        return new ShiftTest(
                shift,
                any ? labels.typical(rank) : Double.NEGATIVE_INFINITY,
                any ? labels.typical(labels.count() - rank) : Double.POSITIVE_INFINITY,
                1 - 2 * rank / labels.count(),
                tails(labels),
                ofSize(labels, shift * weight),
                smallestP(blocks),
                labels.count(),
                labels.exact());
    }

    /** The smallest two-sided p that the numbers on both sides allow. */
    public static double smallestP(List<Block> blocks) {
        return Math.min(1, 2 / relabellings(blocks));
    }

    private static double relabellings(List<Block> blocks) {
        return blocks.stream().mapToDouble(Block::relabellings).reduce(1, (a, b) -> a * b);
    }

    private static double weighted(Block block) {
        double after = Arrays.stream(block.after()).average().orElseThrow();
        return block.weight() * (after - Arrays.stream(block.before()).average().orElseThrow());
    }

    private static Labels labels(List<Block> blocks, double all, long seed) {
        if (all <= Relabellings.ALL_UP_TO) {
            return Relabellings.all(blocks);
        }
        Optional<Halves> halves = Halves.of(blocks);
        return halves.isPresent() ? halves.get() : Relabellings.selected(blocks, seed);
    }

    private static double tails(Labels labels) {
        double slack = ROUNDING * labels.largest();
        double above = labels.atMost(slack);
        double below = labels.count() - labels.atMost(Math.nextDown(-slack));
        return Math.min(1, 2 * Math.min(above, below) / labels.count());
    }

    /** The relabelled statistic is the true one less the loss: as far out on the other side is a loss of twice the true one. */
    private static double ofSize(Labels labels, double statistic) {
        double slack = ROUNDING * labels.largest();
        double low = Math.min(0, 2 * statistic) + slack;
        double high = Math.max(0, 2 * statistic) - slack;
        return Math.min(1, (labels.atMost(low) + labels.count() - labels.atMost(Math.nextDown(high))) / labels.count());
    }
}
