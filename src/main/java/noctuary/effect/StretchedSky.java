package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * The kernel about the sky where a stretch that bends within the noise came before the sharpening: with that bend put
 * into the origin, as the cubic of its values of which the kernel makes the picture best, in turns with the kernel.
 */
final class StretchedSky {
    private static final int POWERS = 3;

    private final double[][][] rows;

    /** @param rows of {@link KernelFit} of the origin's first, second and third powers */
    private StretchedSky(double[][][] rows) {
        this.rows = rows;
    }

    /**
     * @param pairs the origin less its level, and the picture
     * @param first kernel to begin with
     * @param noise of a pixel of the origin, by which its powers are scaled
     */
    static KernelFit kernel(List<KernelFit.Pair> pairs, KernelFit first, double noise, double scale) {
        StretchedSky sky = new StretchedSky(new double[][][] {
            powers(pairs, x -> x), powers(pairs, x -> x * x / noise), powers(pairs, x -> x * x * x / (noise * noise))
        });
        KernelFit fit = first;
        for (int round = 0; round < StraightSky.ROUNDS; round++) {
            fit = KernelFit.plainRows(sky.stretched(fit), scale);
        }
        return fit;
    }

    private static double[][] powers(List<KernelFit.Pair> pairs, DoubleUnaryOperator power) {
        return KernelFit.rows(pairs.stream()
                        .map(p -> new KernelFit.Pair(
                                Arrays.stream(p.x()).map(power).toArray(), p.y(), p.weight()))
                        .toList())
                .stream()
                .filter(KernelFit::grey)
                .toArray(double[][]::new);
    }

    private double[][] stretched(KernelFit fit) {
        LeastSquares fitted = new LeastSquares(POWERS + 1);
        for (int k = 0; k < rows[0].length; k++) {
            double[] under = new double[POWERS + 1];
            under[0] = 1;
            for (int p = 0; p < POWERS; p++) {
                under[p + 1] = fit.under(rows[p][k]);
            }
            fitted.add(under, KernelFit.shown(rows[0][k]));
        }
        double[] cubic = fitted.solve();
        return IntStream.range(0, rows[0].length)
                .mapToObj(k ->
                        KernelFit.mixed(rows[0][k], rows[1][k], cubic[2] / cubic[1], rows[2][k], cubic[3] / cubic[1]))
                .toArray(double[][]::new);
    }
}
