package noctuary.effect;

import java.util.Arrays;
import java.util.List;

/**
 * The round kernel by which the noise of a picture follows from that of its origin.
 *
 * @param taps weight of every pixel on each ring of {@link #OFFSETS}
 * @param gain their sum, what becomes of a slow change
 * @param gainError standard error of it, from how the blocks differ
 */
record RoundKernel(double[] taps, double gain, double gainError) {
    /** Index offsets within a {@link Surround}. */
    static final int[][] OFFSETS = RingOffsets.of(Surround.REACH, Surround.SIDE);

    private static final int RINGS = OFFSETS.length;
    private static final double RIDGE = 1e-9;
    /** The rings up to 3, 4 and 6 px, tried before all. */
    private static final int[] FEWER_RINGS = {6, 8, 10};
    /** A ring counts that lowers the sum of the squares by so many times what a ring does by chance. */
    private static final double BEYOND_CHANCE = 4;

    /** By least squares over the free pixels of all blocks, on as few rings as explain as much as all. */
    static RoundKernel of(List<RingSums> blocks) {
        double[] all = taps(blocks, RINGS);
        double least = left(blocks, all);
        double alone = blocks.stream().mapToInt(RingSums::pixels).sum() / alike(all);
        for (int rings : FEWER_RINGS) {
            double[] taps = taps(blocks, rings);
            if (left(blocks, taps) <= least * (1 + BEYOND_CHANCE * (RINGS - rings) / alone)) {
                return of(blocks, taps, rings);
            }
        }
        return of(blocks, all, RINGS);
    }

    private static double[] taps(List<RingSums> blocks, int rings) {
        double[] right = new double[rings];
        for (RingSums block : blocks) {
            for (int r = 0; r < rings; r++) {
                right[r] += block.pixels() * block.withShown()[r];
            }
        }
        return solved(blocks, right);
    }

    /** How many pixels under the kernel move together: what it leaves over is as smooth as what it makes. */
    private static double alike(double[] taps) {
        double sum = 0;
        double squares = 0;
        for (int r = 0; r < RINGS; r++) {
            sum += taps[r] * OFFSETS[r].length;
            squares += taps[r] * taps[r] * OFFSETS[r].length;
        }
        return Math.max(1, sum * sum / squares);
    }

    /** Sum of the squares that a kernel leaves over. */
    private static double left(List<RingSums> blocks, double[] taps) {
        return blocks.stream()
                .mapToDouble(block -> block.pixels()
                        * (block.shown()[0]
                                - 2 * dot(block.withShown(), taps)
                                + square(taps, block.products().get(0))))
                .sum();
    }

    private static RoundKernel of(List<RingSums> blocks, double[] taps, int rings) {
        double[] counts = Arrays.stream(OFFSETS, 0, rings)
                .mapToDouble(ring -> ring.length)
                .toArray();
        double[] pull = solved(blocks, counts);
        double squares = 0;
        for (RingSums block : blocks) {
            double moved = 0;
            for (int r = 0; r < rings; r++) {
                double left = block.withShown()[r] - dot(block.products().get(0)[r], taps);
                moved += block.pixels() * pull[r] * left;
            }
            squares += moved * moved;
        }
        return new RoundKernel(taps, dot(taps, counts), Math.sqrt(squares));
    }

    /** By the normal equations of as many rings as {@code right} has; zero on the others. */
    private static double[] solved(List<RingSums> blocks, double[] right) {
        int n = right.length;
        double[][] m = new double[n][n + 1];
        for (RingSums block : blocks) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    m[a][b] += block.pixels() * block.products().get(0)[a][b];
                }
            }
        }
        for (int a = 0; a < n; a++) {
            m[a][a] *= 1 + RIDGE;
            m[a][n] = right[a];
        }
        return Arrays.copyOf(Elimination.solve(m), RINGS);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Share of the sum, without sign, on the two outermost rings: near zero where the kernel has died away. */
    double outer() {
        double last = taps[RINGS - 1] * OFFSETS[RINGS - 1].length + taps[RINGS - 2] * OFFSETS[RINGS - 2].length;
        return Math.abs(last / gain);
    }

    /** Mean square of what the kernel makes of rings with these mean products. */
    double square(double[][] products) {
        return square(taps, products);
    }

    private static double square(double[] taps, double[][] products) {
        double sum = 0;
        for (int r = 0; r < RINGS; r++) {
            sum += taps[r] * dot(products[r], taps);
        }
        return sum;
    }

    /** Variance of means over {@code size} x {@code size} px of what becomes of white noise of 1. */
    double ofWhite(int size) {
        double[] weights = new double[Surround.SIDE * Surround.SIDE];
        for (int i = 0; i < size * size; i++) {
            int at = Surround.at(i / size * Block.SIDE + i % size);
            for (int r = 0; r < RINGS; r++) {
                for (int offset : OFFSETS[r]) {
                    weights[at + offset] += taps[r] / (size * size);
                }
            }
        }
        return dot(weights, weights);
    }
}
