package noctuary.stats;

import java.util.function.ToDoubleFunction;

/**
 * What a statistic does when one value is left out.
 *
 * @param acceleration Σ u³ / (6 (Σ u²)^1.5), u the mean of the left-out statistics minus each; for several samples their
 *     u's over each sample's size, together
 * @param standardError √((n - 1) / n Σ u²); NaN for several samples
 */
record Jackknife(double acceleration, double standardError) {
    static Jackknife of(ToDoubleFunction<double[][]> statistic, double[][] samples) {
        double cubes = 0;
        double squares = 0;
        double error = Double.NaN;
        for (int s = 0; s < samples.length; s++) {
            double[] left = leftOut(statistic, samples, s);
            double mean = StudentTest.mean(left);
            double n = left.length;
            double own = 0;
            for (double value : left) {
                double u = (n - 1) * (mean - value) / n;
                cubes += u * u * u;
                squares += u * u;
                own += (mean - value) * (mean - value);
            }
            error = samples.length == 1 ? Math.sqrt((n - 1) / n * own) : Double.NaN;
        }
        return new Jackknife(cubes / (6 * Math.pow(squares, 1.5)), error);
    }

    private static double[] leftOut(ToDoubleFunction<double[][]> statistic, double[][] samples, int s) {
        double[] sample = samples[s];
        double[] left = new double[sample.length];
        double[][] changed = samples.clone();
        for (int i = 0; i < left.length; i++) {
            double[] rest = new double[sample.length - 1];
            System.arraycopy(sample, 0, rest, 0, i);
            System.arraycopy(sample, i + 1, rest, i, rest.length - i);
            changed[s] = rest;
            left[i] = statistic.applyAsDouble(changed);
        }
        return left;
    }
}
