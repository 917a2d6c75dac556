package noctuary.stats;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What the statistic would have been under other labels: for each relabelling of before and after inside the blocks, by
 * how much the sum over the after side falls short of the true one, and how many labels were swapped.
 *
 * @param losses true sum minus relabelled sum; the true labels themselves come first, with 0
 * @param swaps labels moved, 0 for the true ones
 * @param exact whether these are all relabellings, not a random selection of them
 */
record Relabellings(double[] losses, int[] swaps, boolean exact) implements Labels {
    /** All of them up to this many; beyond, a selection. */
    static final int ALL_UP_TO = 20_000;

    /** Selected ones, the true labels included. */
    static final int SELECTED = 10_000;

    /** Every one of them; for a few blocks of few values. */
    static Relabellings all(List<Block> blocks) {
        Relabellings product = new Relabellings(new double[1], new int[1], true);
        for (Block block : blocks) {
            product = product.times(BlockLabels.all(block));
        }
        return product;
    }

    @Override
    public double count() {
        return losses.length;
    }

    @Override
    public double largest() {
        return Arrays.stream(losses).map(Math::abs).max().orElse(0);
    }

    @Override
    public double atMost(double loss) {
        return Arrays.stream(losses).filter(l -> l <= loss).count();
    }

    /** Between two ranks in proportion. */
    @Override
    public double typical(double rank) {
        double[] sorted = ascending();
        double place = Math.min(Math.max(rank - 1, 0), sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private double[] ascending() {
        double[] values = new double[losses.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (swaps[i] > 0) {
                values[count++] = losses[i] / swaps[i];
            }
        }
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private Relabellings times(Relabellings other) {
        int width = other.losses.length;
        double[] sums = new double[losses.length * width];
        int[] moved = new int[sums.length];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = losses[i / width] + other.losses[i % width];
            moved[i] = swaps[i / width] + other.swaps[i % width];
        }
        return new Relabellings(sums, moved, true);
    }

    static Relabellings selected(List<Block> blocks, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] sums = new double[SELECTED];
        int[] moved = new int[SELECTED];
        for (Block block : blocks) {
            BlockLabels labels = new BlockLabels(block);
            for (int i = 1; i < SELECTED; i++) {
                labels.shuffle(random);
                sums[i] += labels.loss();
                moved[i] += labels.swaps();
            }
        }
        return new Relabellings(sums, moved, false);
    }
}
