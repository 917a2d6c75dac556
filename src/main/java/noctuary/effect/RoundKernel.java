package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The round kernel by which the noise of a picture follows from that of its origin.
 *
 * @param taps weight of every pixel on each ring of {@link #OFFSETS}
 * @param gain their sum, what becomes of a slow change
 * @param gainError standard error of it, from how the blocks differ
 */
record RoundKernel(double[] taps, double gain, double gainError) {
    /** Index offsets within a {@link Surround}, ring after ring: by distance up to 3 px, by rounded distance from there. */
    static final int[][] OFFSETS = offsets();

    private static final int RINGS = OFFSETS.length;
    private static final double RIDGE = 1e-9;

    private static int[][] offsets() {
        SortedMap<Double, List<Integer>> rings = new TreeMap<>();
        for (int dy = -Surround.REACH; dy <= Surround.REACH; dy++) {
            for (int dx = -Surround.REACH; dx <= Surround.REACH; dx++) {
                double apart = Math.hypot(dx, dy);
                double ring = apart < 3 ? apart : Math.rint(apart);
                if (ring <= Surround.REACH) {
                    rings.computeIfAbsent(ring, r -> new ArrayList<>()).add(dy * Surround.SIDE + dx);
                }
            }
        }
        return rings.values().stream()
                .map(ring -> ring.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** By least squares over the free pixels of all blocks. */
    static RoundKernel of(List<RingSums> blocks) {
        double[] right = new double[RINGS];
        for (RingSums block : blocks) {
            for (int r = 0; r < RINGS; r++) {
                right[r] += block.pixels() * block.withShown()[r];
            }
        }
        double[] taps = solved(blocks, right);
        double[] counts =
                Arrays.stream(OFFSETS).mapToDouble(ring -> ring.length).toArray();
        double[] pull = solved(blocks, counts);
        double squares = 0;
        for (RingSums block : blocks) {
            double moved = 0;
            for (int r = 0; r < RINGS; r++) {
                double left = block.withShown()[r] - dot(block.products().get(0)[r], taps);
                moved += block.pixels() * pull[r] * left;
            }
            squares += moved * moved;
        }
        return new RoundKernel(taps, dot(taps, counts), Math.sqrt(squares));
    }

    private static double[] solved(List<RingSums> blocks, double[] right) {
        double[][] m = new double[RINGS][RINGS + 1];
        for (RingSums block : blocks) {
            for (int a = 0; a < RINGS; a++) {
                for (int b = 0; b < RINGS; b++) {
                    m[a][b] += block.pixels() * block.products().get(0)[a][b];
                }
            }
        }
        for (int a = 0; a < RINGS; a++) {
            m[a][a] *= 1 + RIDGE;
            m[a][RINGS] = right[a];
        }
        return Elimination.solve(m);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
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
