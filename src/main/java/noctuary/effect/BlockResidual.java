package noctuary.effect;

import java.util.Arrays;
import noctuary.stats.Selection;

/** One block of a layer after the plane through its free pixels is taken off. */
final class BlockResidual {
    private static final int SIDE = Block.SIDE;

    private final double[] values;
    private final boolean[] free;

    private BlockResidual(double[] values, boolean[] free) {
        this.values = values;
        this.free = free;
    }

    /** @param layer of the block's tile */
    static BlockResidual of(Block block, float[] layer) {
        double[] values = new double[SIDE * SIDE];
        for (int i = 0; i < values.length; i++) {
            values[i] = block.free()[i] ? layer[block.at(i)] : 0;
        }
        return of(values, block.free());
    }

    /** @param values of a block's pixels; its own from here on */
    static BlockResidual of(double[] values, boolean[] free) {
        Slant slant = Slant.of(values, free);
        for (int i = 0; i < values.length; i++) {
            values[i] -= free[i] ? slant.at(i % SIDE, i / SIDE) : values[i];
        }
        return new BlockResidual(values, free);
    }

    /** Mean square of the means of squares of {@code size} px without a masked pixel; NaN for none. */
    double variance(int size) {
        double[] means = means(size);
        double sum = 0;
        for (double mean : means) {
            sum += mean * mean;
        }
        return means.length == 0 ? Double.NaN : sum / means.length;
    }

    /** Means of squares of {@code size} px without a masked pixel, row after row. */
    double[] means(int size) {
        if (size == 1) {
            return pixels();
        }
        double[] means = new double[SIDE / size * (SIDE / size)];
        int count = 0;
        for (int y = 0; y < SIDE; y += size) {
            for (int x = 0; x < SIDE; x += size) {
                double mean = mean(x, y, size);
                if (!Double.isNaN(mean)) {
                    means[count++] = mean;
                }
            }
        }
        return Arrays.copyOf(means, count);
    }

    private double[] pixels() {
        double[] pixels = new double[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (free[i]) {
                pixels[count++] = values[i];
            }
        }
        return Arrays.copyOf(pixels, count);
    }

    private double mean(int left, int top, int size) {
        double sum = 0;
        for (int y = top; y < top + size; y++) {
            for (int x = left; x < left + size; x++) {
                if (!free[y * SIDE + x]) {
                    return Double.NaN;
                }
                sum += values[y * SIDE + x];
            }
        }
        return sum / (size * size);
    }

    /** Mean square distance of the pixels above the median from it: what a cut at black leaves untouched. */
    double upperVariance() {
        float[] all = new float[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (free[i]) {
                all[count++] = (float) values[i];
            }
        }
        double median = Selection.median(all, count);
        double sum = 0;
        int above = 0;
        for (int i = 0; i < count; i++) {
            if (all[i] > median) {
                sum += (all[i] - median) * (all[i] - median);
                above++;
            }
        }
        return sum / above;
    }

    /** Mean product of neighbours along rows and columns over the mean square; NaN without noise. */
    double neighbourCorrelation() {
        double product = 0;
        long pairs = 0;
        for (int i = 0; i < values.length; i++) {
            if (free[i] && i % SIDE < SIDE - 1 && free[i + 1]) {
                product += values[i] * values[i + 1];
                pairs++;
            }
            if (free[i] && i < values.length - SIDE && free[i + SIDE]) {
                product += values[i] * values[i + SIDE];
                pairs++;
            }
        }
        return product / pairs / variance(1);
    }
}
