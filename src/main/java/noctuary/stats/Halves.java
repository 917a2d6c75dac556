package noctuary.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All relabellings, counted without listing them: the largest block's values before and its values after give sums of any
 * k of them each, sorted once, and a pass over two sorted lists counts the pairs of sums below a bound (two lists for one
 * of all subsets: Horowitz &amp; Sahni 1974, J. ACM 21, 277). The relabellings of the other blocks, which must be few, ride
 * on the first list. Twelve values against twelve are 2.7 million relabellings and 8,192 sums.
 */
final class Halves implements Labels {
    /** Sums on either list. */
    private static final int MOST = 1 << 15;

    private static final int HALVINGS = 50;

    /** Sums that meet when {@code swapped} labels of the largest block and {@code others} of the other blocks move. */
    private record Meeting(double[] arriving, double[] leaving, int swapped, int others) {}

    private final List<Meeting> meetings;
    private final double count;
    private final double reach;
    private final double largest;

    private Halves(List<Meeting> meetings, double count, double reach) {
        this.meetings = meetings;
        this.count = count;
        this.reach = reach;
        largest = meetings.stream()
                .mapToDouble(m -> Math.max(
                        -m.arriving[0] - m.leaving[0],
                        m.arriving[m.arriving.length - 1] + m.leaving[m.leaving.length - 1]))
                .max()
                .orElse(0);
    }

    /** Empty where the lists would be too long. */
    static Optional<Halves> of(List<Block> blocks) {
        List<Block> others = new ArrayList<>(blocks);
        others.sort(Comparator.comparingInt(Block::size));
        Block block = others.remove(others.size() - 1);
        double count = others.stream().mapToDouble(Block::relabellings).reduce(1, (a, b) -> a * b);
        if (count * Math.pow(2, block.before().length) > MOST || Math.pow(2, block.after().length) > MOST) {
            return Optional.empty();
        }
        double reach = blocks.stream().mapToDouble(Halves::range).max().orElse(0);
        return Optional.of(new Halves(meetings(block, Relabellings.all(others)), count * block.relabellings(), reach));
    }

    private static double range(Block block) {
        double low = Math.min(
                Arrays.stream(block.before()).min().orElseThrow(),
                Arrays.stream(block.after()).min().orElseThrow());
        return Math.max(
                        Arrays.stream(block.before()).max().orElseThrow(),
                        Arrays.stream(block.after()).max().orElseThrow())
                - low;
    }

    private static List<Meeting> meetings(Block block, Relabellings others) {
        double[][] arriving = sums(block.before(), -1);
        double[][] leaving = sums(block.after(), 1);
        List<Meeting> meetings = new ArrayList<>();
        int swaps = Arrays.stream(others.swaps()).max().orElse(0);
        for (int k = 0; k < Math.min(arriving.length, leaving.length); k++) {
            for (int j = 0; j <= swaps; j++) {
                double[] joined = joined(arriving[k], others, j);
                if (joined.length > 0) {
                    meetings.add(new Meeting(joined, leaving[k], k, j));
                }
            }
        }
        return meetings;
    }

    /** For each k the sums of any k values, ascending. */
    private static double[][] sums(double[] values, int sign) {
        double[] all = new double[1 << values.length];
        int[] sizes = new int[values.length + 1];
        sizes[0] = 1;
        for (int mask = 1; mask < all.length; mask++) {
            all[mask] = all[mask & mask - 1] + sign * values[Integer.numberOfTrailingZeros(mask)];
            sizes[Integer.bitCount(mask)]++;
        }
        double[][] bySize = new double[sizes.length][];
        Arrays.setAll(bySize, k -> new double[sizes[k]]);
        for (int mask = 0; mask < all.length; mask++) {
            int k = Integer.bitCount(mask);
            bySize[k][--sizes[k]] = all[mask];
        }
        for (double[] sums : bySize) {
            Arrays.sort(sums);
        }
        return bySize;
    }

    private static double[] joined(double[] sums, Relabellings others, int swaps) {
        double[] losses = new double[others.losses().length];
        int found = 0;
        for (int i = 0; i < losses.length; i++) {
            if (others.swaps()[i] == swaps) {
                losses[found++] = others.losses()[i];
            }
        }
        double[] joined = new double[sums.length * found];
        for (int i = 0; i < joined.length; i++) {
            joined[i] = sums[i / found] + losses[i % found];
        }
        Arrays.sort(joined);
        return joined;
    }

    @Override
    public double count() {
        return count;
    }

    @Override
    public boolean exact() {
        return true;
    }

    @Override
    public double largest() {
        return largest;
    }

    @Override
    public double atMost(double loss) {
        return meetings.stream().mapToDouble(m -> pairs(m, loss)).sum();
    }

    @Override
    public double typical(double rank) {
        double low = -reach;
        double high = reach;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (typicalAtMost(middle) < rank) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double typicalAtMost(double shift) {
        return meetings.stream()
                .filter(m -> m.swapped + m.others > 0)
                .mapToDouble(m -> pairs(m, shift * (m.swapped + m.others)))
                .sum();
    }

    private static long pairs(Meeting meeting, double bound) {
        double[] rising = meeting.arriving;
        double[] falling = meeting.leaving;
        long pairs = 0;
        int below = falling.length;
        for (double sum : rising) {
            while (below > 0 && sum + falling[below - 1] > bound) {
                below--;
            }
            if (below == 0) {
                return pairs;
            }
            pairs += below;
        }
        return pairs;
    }
}
