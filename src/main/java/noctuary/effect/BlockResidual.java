package noctuary.effect;

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
        takeOffPlane(values, block.free());
        return new BlockResidual(values, block.free());
    }

    /** Least squares over the free pixels by the normal equations of 1, x, y. */
    private static void takeOffPlane(double[] values, boolean[] free) {
        double[][] m = new double[3][4];
        for (int i = 0; i < values.length; i++) {
            if (free[i]) {
                double[] row = {1, x(i), y(i), values[i]};
                for (int a = 0; a < 3; a++) {
                    for (int b = 0; b < 4; b++) {
                        m[a][b] += row[a] * row[b];
                    }
                }
            }
        }
        double[] plane = Elimination.solve(m);
        for (int i = 0; i < values.length; i++) {
            values[i] -= free[i] ? plane[0] + plane[1] * x(i) + plane[2] * y(i) : 0;
        }
    }

    private static double x(int i) {
        return i % SIDE - (SIDE - 1) / 2.0;
    }

    private static double y(int i) {
        return i / SIDE - (SIDE - 1) / 2.0;
    }

    /** Mean square of the means of squares of {@code size} px without a masked pixel; NaN for none. */
    double variance(int size) {
        double sum = 0;
        int count = 0;
        for (int y = 0; y < SIDE; y += size) {
            for (int x = 0; x < SIDE; x += size) {
                double mean = mean(x, y, size);
                if (!Double.isNaN(mean)) {
                    sum += mean * mean;
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
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
