package noctuary.stats;

import java.util.SplittableRandom;

/** One block's values in some order; those in the last places count as after. */
final class BlockLabels {
    private final int before;
    private final double[] values;
    private final int[] order;
    private final double trueSum;

    BlockLabels(Block block) {
        before = block.before().length;
        values = new double[block.size()];
        order = new int[values.length];
        System.arraycopy(block.before(), 0, values, 0, before);
        System.arraycopy(block.after(), 0, values, before, block.after().length);
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            order[i] = i;
            sum += i >= before ? values[i] : 0;
        }
        trueSum = sum;
    }

    /** Every choice of the after side, the true one first. */
    static Relabellings all(Block block) {
        int count = (int) block.relabellings();
        double[] losses = new double[count];
        int[] swaps = new int[count];
        BlockLabels labels = new BlockLabels(block);
        int[] chosen = new int[block.after().length];
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] = labels.before + i;
        }
        for (int row = 0; row < count; row++) {
            System.arraycopy(chosen, 0, labels.order, labels.before, chosen.length);
            losses[row] = labels.loss();
            swaps[row] = labels.swaps();
            previous(chosen);
        }
        return new Relabellings(losses, swaps, true);
    }

    /** Draws the after side anew; a place's chance is even to a part in 10⁸. */
    void shuffle(SplittableRandom random) {
        for (int i = order.length - 1; i >= before; i--) {
            int j = (int) ((random.nextInt() & 0xffffffffL) * (i + 1) >>> 32);
            int swap = order[i];
            order[i] = order[j];
            order[j] = swap;
        }
    }

    double loss() {
        double sum = 0;
        for (int i = before; i < order.length; i++) {
            sum += values[order[i]];
        }
        return trueSum - sum;
    }

    int swaps() {
        int moved = 0;
        for (int i = before; i < order.length; i++) {
            moved += order[i] < before ? 1 : 0;
        }
        return moved;
    }

    /** The choice before this one, of ascending places: the last one that can step down does, those above it follow. */
    private static void previous(int[] chosen) {
        int i = 0;
        while (i < chosen.length && chosen[i] == i) {
            i++;
        }
        if (i < chosen.length) {
            chosen[i]--;
            for (int j = i - 1; j >= 0; j--) {
                chosen[j] = chosen[j + 1] - 1;
            }
        }
    }
}
