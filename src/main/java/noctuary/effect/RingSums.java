package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * For pixels of a block the sums of the origin over rings around them, and the picture, each less its plane, as mean
 * products of means over squares.
 *
 * @param block with those pixels free
 * @param products of two rings, by {@link NoiseReport#SIZES}
 * @param withShown of rings and the picture, of single pixels
 * @param shown mean squares of the picture, by size
 * @param squares how many of each size
 */
record RingSums(Block block, List<double[][]> products, double[] withShown, double[] shown, int[] squares) {
    /** @param around the block on the origin under the stretch */
    static RingSums of(Block block, Surround around, float[] picture) {
        BlockResidual[] rings = new BlockResidual[RoundKernel.OFFSETS.length];
        for (int r = 0; r < rings.length; r++) {
            rings[r] = BlockResidual.of(sums(around.values(), RoundKernel.OFFSETS[r]), block.free());
        }
        BlockResidual own = BlockResidual.of(block, picture);
        List<double[][]> products = new ArrayList<>();
        double[] shown = new double[NoiseReport.SIZES.length];
        int[] squares = new int[NoiseReport.SIZES.length];
        for (int s = 0; s < shown.length; s++) {
            products.add(products(means(rings, NoiseReport.SIZES[s])));
            shown[s] = own.variance(NoiseReport.SIZES[s]);
            squares[s] = own.means(NoiseReport.SIZES[s]).length;
        }
        double[] pixels = own.means(1);
        double[] withShown = Arrays.stream(rings)
                .mapToDouble(ring -> product(ring.means(1), pixels))
                .toArray();
        return new RingSums(block, products, withShown, shown, squares);
    }

    private static double[] sums(double[] values, int[] offsets) {
        double[] sums = new double[Block.SIDE * Block.SIDE];
        for (int offset : offsets) {
            for (int y = 0; y < Block.SIDE; y++) {
                int row = y * Block.SIDE;
                int from = Surround.at(row) + offset;
                for (int x = 0; x < Block.SIDE; x++) {
                    sums[row + x] += values[from + x];
                }
            }
        }
        return sums;
    }

    private static double[][] means(BlockResidual[] rings, int size) {
        double[][] means = new double[rings.length][];
        for (int r = 0; r < rings.length; r++) {
            means[r] = rings[r].means(size);
        }
        return means;
    }

    private static double[][] products(double[][] means) {
        double[][] products = new double[means.length][means.length];
        for (int a = 0; a < means.length; a++) {
            for (int b = 0; b <= a; b++) {
                products[a][b] = product(means[a], means[b]);
                products[b][a] = products[a][b];
            }
        }
        return products;
    }

    /** NaN without any. */
    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum / a.length;
    }

    int pixels() {
        return (int) Math.rint(block.freeShare() * Block.SIDE * Block.SIDE);
    }

    /** Mean square of what the picture has beyond what a kernel makes of the origin; NaN where no square is free. */
    double rest(RoundKernel kernel, int size) {
        int place = place(size);
        return shown[place] - kernel.square(products.get(place));
    }

    /** How many squares of that size are free. */
    int squares(int size) {
        return squares[place(size)];
    }

    private static int place(int size) {
        return Arrays.binarySearch(NoiseReport.SIZES, size);
    }
}
