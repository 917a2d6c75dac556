package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The round kernel by which one layer follows from another, by weighted least squares over the inner pixels of patches:
 * y = constant + sum over rings of h times the sum of x on the ring. Its sum is what becomes of a slow change.
 *
 * @param gain sum of the kernel
 * @param constant what zero becomes
 * @param misfit mean of ln(1 + (off / scale)²), with off as weighted
 * @param outer share of the kernel's sum on its two outermost rings, without sign: near zero where it has died away
 * @param rms of what is left over, in weighted units of y
 * @param rings used, the innermost
 * @param taps the constant and the weight of every pixel on each ring
 */
record KernelFit(
        double gain, double constant, double misfit, double outer, double rms, int rows, int rings, double[] taps) {
    private static final int ROUNDS = 2;
    /** Index offsets within a patch. */
    private static final int[][] OFFSETS = RingOffsets.of(Patch.RINGS, Patch.SIDE);

    private static final int RINGS = OFFSETS.length;
    private static final int N = RINGS + 1;
    private static final double RIDGE = 1e-9;
    /** The rings up to 1.5, 3, 4 and 6 px, tried before all. */
    private static final int[] FEWER_RINGS = {3, 6, 8, 10};
    /** A ring counts that lowers the sum of the squares by so many times what a ring does by chance. */
    private static final double BEYOND_CHANCE = 4;

    /** Standard error of the gain as a share of it, for white noise of this size in x. */
    double gainError(double noise) {
        int pixels =
                Arrays.stream(OFFSETS, 0, rings).mapToInt(ring -> ring.length).sum();
        return rms * Math.sqrt((double) pixels / rows) / (noise * Math.abs(gain));
    }

    /** What is left over, as a share of what the kernel makes of unit noise. */
    double leftShare() {
        return rms / (wider() * Math.abs(gain));
    }

    /** Noise under the kernel over that of x, where that is white, if the kernel's sum were one. */
    double wider() {
        double squares = 0;
        for (int r = 0; r < RINGS; r++) {
            squares += OFFSETS[r].length * taps[r + 1] * taps[r + 1];
        }
        return Math.sqrt(squares) / Math.abs(gain);
    }

    /** What the kernel, its sum made one, makes of a row's x. */
    double under(double[] row) {
        double sum = 0;
        for (int k = 1; k < N; k++) {
            sum += taps[k] * row[k];
        }
        return sum / gain;
    }

    static double shown(double[] row) {
        return row[N];
    }

    /** Whether the picture is neither black nor white there. */
    static boolean grey(double[] row) {
        return shown(row) > 0 && shown(row) < 1;
    }

    /** The row with another y. */
    static double[] with(double[] row, double y) {
        double[] out = row.clone();
        out[N] = y;
        return out;
    }

    /** The row with so much of two others' x added. */
    static double[] mixed(double[] row, double[] second, double much, double[] third, double more) {
        double[] out = row.clone();
        for (int k = 1; k < N; k++) {
            out[k] += much * second[k] + more * third[k];
        }
        return out;
    }

    static List<double[]> rows(List<Pair> pairs) {
        return pairs.parallelStream().flatMap(KernelFit::rows).toList();
    }

    /** One patch's layers: what follows from what, and how much a unit of y counts at each pixel. */
    record Pair(double[] x, double[] y, double[] weight) {}

    /**
     * By least squares of all alike. For Gaussian noise and any step that moves with what it is given, as medians do too,
     * the kernel's sum is then one (Stein 1981, Annals of Statistics 9, 1135).
     */
    static KernelFit plain(List<Pair> pairs, double scale) {
        return plainRows(rows(pairs).toArray(double[][]::new), scale);
    }

    static KernelFit plainRows(double[][] rows, double scale) {
        double[] alike = new double[rows.length];
        Arrays.fill(alike, 1);
        KernelFit all = of(rows, solve(rows, alike, RINGS), scale, RINGS);
        return Arrays.stream(FEWER_RINGS)
                .mapToObj(rings -> of(rows, solve(rows, alike, rings), scale, rings))
                .filter(all::needsNoMoreThan)
                .findFirst()
                .orElse(all);
    }

    /** Whether the rings beyond those of {@code fewer} explain no more than chance would: their noise is then spared. */
    private boolean needsNoMoreThan(KernelFit fewer) {
        double chance = BEYOND_CHANCE * (rings - fewer.rings) / rows;
        return fewer.rms * fewer.rms <= rms * rms * (1 + chance);
    }

    /**
     * Pixels that are far off count less.
     *
     * @param scale of what is little, in weighted units of y
     */
    static KernelFit of(List<Pair> pairs, double scale) {
        double[][] rows = pairs.parallelStream().flatMap(KernelFit::rows).toArray(double[][]::new);
        double[] robust = new double[rows.length];
        Arrays.fill(robust, 1);
        double[] h = new double[N];
        for (int round = 0; round < ROUNDS; round++) {
            h = solve(rows, robust, RINGS);
            for (int k = 0; k < rows.length; k++) {
                double off = off(rows[k], h) / scale;
                robust[k] = 1 / (1 + off * off);
            }
        }
        return of(rows, h, scale, RINGS);
    }

    private static KernelFit of(double[][] rows, double[] h, double scale, int rings) {
        double misfit = 0;
        double squares = 0;
        for (double[] row : rows) {
            double off = off(row, h) / scale;
            misfit += Math.log1p(off * off) / rows.length;
            squares += off * off * scale * scale / rows.length;
        }
        double gain = 0;
        for (int r = 0; r < RINGS; r++) {
            gain += h[r + 1] * OFFSETS[r].length;
        }
        double outer = h[N - 1] * OFFSETS[RINGS - 1].length + h[N - 2] * OFFSETS[RINGS - 2].length;
        return new KernelFit(gain, h[0], misfit, Math.abs(outer / gain), Math.sqrt(squares), rows.length, rings, h);
    }

    /** 1, the sums over rings, y, weight: for every second inner pixel. */
    private static Stream<double[]> rows(Pair pair) {
        int side = 2 * Patch.INNER + 1;
        return IntStream.range(0, side * side)
                .filter(i -> (i % side + i / side) % 2 == 0)
                .mapToObj(i -> {
                    int at = (Patch.RINGS + i / side) * Patch.SIDE + Patch.RINGS + i % side;
                    double[] row = new double[N + 2];
                    row[0] = 1;
                    for (int r = 0; r < RINGS; r++) {
                        for (int offset : OFFSETS[r]) {
                            row[r + 1] += pair.x()[at + offset];
                        }
                    }
                    row[N] = pair.y()[at];
                    row[N + 1] = pair.weight()[at];
                    return row;
                });
    }

    private static double off(double[] row, double[] h) {
        double off = row[N];
        for (int k = 0; k < N; k++) {
            off -= h[k] * row[k];
        }
        return off * row[N + 1];
    }

    /** Nothing on the rings beyond the innermost {@code rings}. */
    private static double[] solve(double[][] rows, double[] robust, int rings) {
        int n = rings + 1;
        double[][] m = new double[n][n + 1];
        for (int k = 0; k < rows.length; k++) {
            double w = robust[k] * rows[k][N + 1] * rows[k][N + 1];
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    m[a][b] += w * rows[k][a] * rows[k][b];
                }
                m[a][n] += w * rows[k][a] * rows[k][N];
            }
        }
        for (int a = 0; a < n; a++) {
            m[a][a] *= 1 + RIDGE;
        }
        return Arrays.copyOf(Elimination.solve(m), N);
    }
}
