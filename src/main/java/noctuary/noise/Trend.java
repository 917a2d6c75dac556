package noctuary.noise;

import java.util.function.IntUnaryOperator;

/** What is left of a series when every block of it loses its own parabola: the sky bends slowly, banding does not. */
final class Trend {
    private static final int TERMS = 3;

    private Trend() {}

    /**
     * Variance about the parabolas, freed of what they take from noise.
     *
     * @param at ascending places of the values
     * @param start first place of each block, and the end
     */
    static double unexplained(int[] at, double[] values, int blocks, IntUnaryOperator start) {
        double sum2 = 0;
        int freedom = 0;
        int from = 0;
        for (int block = 0; block < blocks; block++) {
            int to = from;
            while (to < at.length && at[to] < start.applyAsInt(block + 1)) {
                to++;
            }
            if (to - from > TERMS) {
                sum2 += aboutParabola(at, values, from, to);
                freedom += to - from - TERMS;
            }
            from = to;
        }
        return freedom == 0 ? 0 : sum2 / freedom;
    }

    private static double aboutParabola(int[] at, double[] values, int from, int to) {
        double middle = (at[from] + at[to - 1]) / 2.0;
        double half = Math.max(1, (at[to - 1] - at[from]) / 2.0);
        NormalEquations equations = new NormalEquations(TERMS);
        for (int i = from; i < to; i++) {
            equations.add(basis((at[i] - middle) / half), values[i], 1);
        }
        double[] c = equations.solve();
        double sum2 = 0;
        for (int i = from; i < to; i++) {
            double[] basis = basis((at[i] - middle) / half);
            double left = values[i] - c[0] - c[1] * basis[1] - c[2] * basis[2];
            sum2 += left * left;
        }
        return sum2;
    }

    private static double[] basis(double t) {
        return new double[] {1, t, t * t};
    }
}
