package noctuary.effect;

import java.util.Arrays;
import java.util.List;

/**
 * The kernel about the sky where a stretch bends within sharpened noise: with that bend taken out of the picture, as the
 * cubic of its values that follows what the kernel makes of the origin best, in turns with the kernel.
 */
final class StraightSky {
    static final int ROUNDS = 6;
    private static final int POWERS = 4;

    private final List<double[]> rows;
    private final double middle;
    private final double reach;

    private StraightSky(List<double[]> rows) {
        this.rows = rows;
        double[] shown = rows.stream().mapToDouble(KernelFit::shown).toArray();
        this.middle = Arrays.stream(shown).average().orElse(0);
        this.reach = Math.sqrt(Arrays.stream(shown)
                .map(v -> (v - middle) * (v - middle))
                .average()
                .orElse(1));
    }

    /**
     * @param rows of {@link KernelFit}; the black and the white ones are passed over
     * @param first kernel to begin with
     */
    static KernelFit kernel(List<double[]> rows, KernelFit first, double scale) {
        StraightSky sky = new StraightSky(rows.stream().filter(KernelFit::grey).toList());
        KernelFit fit = first;
        for (int round = 0; round < ROUNDS; round++) {
            fit = KernelFit.plainRows(sky.straightened(fit), scale);
        }
        return fit;
    }

    private double[][] straightened(KernelFit fit) {
        LeastSquares fitted = new LeastSquares(POWERS);
        rows.forEach(row -> fitted.add(powers(row), fit.under(row)));
        double[] cubic = fitted.solve();
        return rows.stream()
                .map(row -> KernelFit.with(row, PlaneLoss.dot(cubic, powers(row))))
                .toArray(double[][]::new);
    }

    private double[] powers(double[] row) {
        double t = (KernelFit.shown(row) - middle) / reach;
        return new double[] {1, t, t * t, t * t * t};
    }
}
