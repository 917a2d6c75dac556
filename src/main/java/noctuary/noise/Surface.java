package noctuary.noise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import noctuary.stats.Robust;

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

    private static final int TRIALS = 400;
    private static final int PASSES = 15;
    private static final double TUKEY = 4.685;

    private final double[] coefficients;
    private final List<Patch> patches;
    private final double scatter;

    private Surface(double[] coefficients, List<Patch> patches) {
        this.coefficients = coefficients;
        this.patches = patches;
        this.scatter = Robust.MAD_TO_SIGMA * medianResidual(coefficients, patches);
    }

    /** The background of a few cells together. */
    record Patch(double u, double v, double level, int cells) {}

    static Surface fit(Grid grid, int terms) {
        List<Patch> patches = Patches.of(grid);
        double[] best = new double[terms];
        best[0] = Robust.median(patches.stream().mapToDouble(Patch::level).toArray());
        if (patches.size() < 3 * terms) {
            return new Surface(best, patches);
        }
        double least = medianResidual(best, patches);
        Random random = new Random(1);
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] through = through(patches, random, terms);
            double residual = medianResidual(through, patches);
            if (residual < least) {
                least = residual;
                best = through;
            }
        }
        for (int pass = 0; pass < PASSES; pass++) {
            best = reweighted(best, patches);
        }
        return new Surface(best, patches);
    }

    private static double[] through(List<Patch> patches, Random random, int terms) {
        NormalEquations equations = new NormalEquations(terms);
        for (int i = 0; i < 2 * terms; i++) {
            Patch patch = patches.get(random.nextInt(patches.size()));
            equations.add(basis(patch, terms), patch.level(), 1);
        }
        return equations.solve();
    }

    private static double[] reweighted(double[] coefficients, List<Patch> patches) {
        double reach = TUKEY * Math.max(Robust.MAD_TO_SIGMA * medianResidual(coefficients, patches), 1e-9);
        NormalEquations equations = new NormalEquations(coefficients.length);
        for (Patch patch : patches) {
            double[] basis = basis(patch, coefficients.length);
            double r = (patch.level() - value(coefficients, basis)) / reach;
            if (Math.abs(r) < 1) {
                equations.add(basis, patch.level(), (1 - r * r) * (1 - r * r));
            }
        }
        return equations.solve();
    }

    private static double medianResidual(double[] coefficients, List<Patch> patches) {
        List<Double> residuals = new ArrayList<>();
        for (Patch patch : patches) {
            residuals.add(Math.abs(patch.level() - value(coefficients, basis(patch, coefficients.length))));
        }
        return Robust.median(residuals.stream().mapToDouble(Double::doubleValue).toArray());
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
