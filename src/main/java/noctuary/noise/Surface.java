package noctuary.noise;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * A smooth surface through the background, fitted so that anything up to nearly half of the field may stand out from
 * it: of many surfaces through a few patches the one with the least median residual, then reweighted least squares
 * (Tukey's biweight). Coordinates run from -1 to 1 over the field.
 */
final class Surface {
    /** Terms of a plane: 1, u, v. */
    static final int PLANE = 3;
    /** And of the darkening towards all corners alike: r², r⁴. */
    static final int VIGNETTED = 5;

    private static final int TRIALS = 150;
    private static final int PASSES = 15;
    private static final double TUKEY = 4.685;

    private final double[] coefficients;
    private final List<Patch> patches;
    private final double scatter;

    private Surface(double[] coefficients, List<Patch> patches, double medianResidual) {
        this.coefficients = coefficients;
        this.patches = patches;
        this.scatter = Robust.MAD_TO_SIGMA * medianResidual;
    }

    /** The background of a few cells together; NaN where there is none. */
    record Patch(double u, double v, double level) {}

    static Surface fit(List<Patch> patches, int terms) {
        List<Patch> known =
                patches.stream().filter(patch -> !Double.isNaN(patch.level())).toList();
        double[][] bases = known.stream().map(patch -> basis(patch, terms)).toArray(double[][]::new);
        double[] levels = known.stream().mapToDouble(Patch::level).toArray();
        double[] best = new double[terms];
        best[0] = Robust.median(levels);
        double least = medianResidual(best, bases, levels);
        if (levels.length < 3 * terms) {
            return new Surface(best, patches, least);
        }
        Random random = new Random(1);
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] through = through(bases, levels, random);
            double residual = medianResidual(through, bases, levels);
            if (residual < least) {
                least = residual;
                best = through;
            }
        }
        for (int pass = 0; pass < PASSES; pass++) {
            best = reweighted(best, bases, levels);
        }
        return new Surface(best, patches, medianResidual(best, bases, levels));
    }

    private static double[] through(double[][] bases, double[] levels, Random random) {
        NormalEquations equations = new NormalEquations(bases[0].length);
        for (int i = 0; i < 2 * bases[0].length; i++) {
            int patch = random.nextInt(bases.length);
            equations.add(bases[patch], levels[patch], 1);
        }
        return equations.solve();
    }

    private static double[] reweighted(double[] coefficients, double[][] bases, double[] levels) {
        double scatter = Robust.MAD_TO_SIGMA * medianResidual(coefficients, bases, levels);
        double reach = TUKEY * Math.max(scatter, 1e-9);
        NormalEquations equations = new NormalEquations(coefficients.length);
        for (int i = 0; i < levels.length; i++) {
            double r = (levels[i] - value(coefficients, bases[i])) / reach;
            if (Math.abs(r) < 1) {
                equations.add(bases[i], levels[i], (1 - r * r) * (1 - r * r));
            }
        }
        return equations.solve();
    }

    private static double medianResidual(double[] coefficients, double[][] bases, double[] levels) {
        float[] residuals = new float[levels.length];
        for (int i = 0; i < levels.length; i++) {
            residuals[i] = (float) Math.abs(levels[i] - value(coefficients, bases[i]));
        }
        return Selection.median(residuals, residuals.length);
    }

    private static double[] basis(Patch patch, int terms) {
        double r2 = patch.u() * patch.u() + patch.v() * patch.v();
        double[] all = {1, patch.u(), patch.v(), r2, r2 * r2};
        return Arrays.copyOf(all, terms);
    }

    private static double value(double[] coefficients, double[] basis) {
        double sum = 0;
        for (int i = 0; i < basis.length; i++) {
            sum += coefficients[i] * basis[i];
        }
        return sum;
    }

    double coefficient(int term) {
        return coefficients[term];
    }

    double at(Patch patch) {
        return value(coefficients, basis(patch, coefficients.length));
    }

    double residual(Patch patch) {
        return patch.level() - at(patch);
    }

    List<Patch> patches() {
        return patches;
    }

    /** Robust standard deviation of the patches about the surface. */
    double scatter() {
        return scatter;
    }
}
