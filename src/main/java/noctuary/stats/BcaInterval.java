package noctuary.stats;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Bootstrap interval, corrected for bias and for a spread that changes with the value (Efron 1987, JASA 82, 171): levels
 * Φ(z₀ + (z₀ + z) / (1 - a (z₀ + z))) of the resampled statistics, z₀ from the share below the observed one (ties half), a
 * from leaving out one value at a time. Too narrow below about eight values a side.
 *
 * @param bias z₀
 * @param acceleration a
 * @param jackknifeError standard error from leaving out one value at a time; NaN for several samples
 */
public record BcaInterval(double low, double high, double bias, double acceleration, double jackknifeError) {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Up to this many resamples of one sample, all of them are taken. */
    private static final double ALL_UP_TO = 50_000;

    /**
     * @param statistic of as many samples as given, each resampled by itself
     * @param resamples how many, unless one sample has few enough for all
     * @throws IllegalArgumentException when the statistic does not move
     */
    public static BcaInterval of(
            ToDoubleFunction<double[][]> statistic, double level, int resamples, long seed, double[]... samples) {
        double[] drawn = samples.length == 1 && Math.pow(samples[0].length, samples[0].length) <= ALL_UP_TO
                ? every(statistic, samples[0])
                : random(statistic, resamples, seed, samples);
        Arrays.sort(drawn);
        double observed = statistic.applyAsDouble(samples);
        double share = Arrays.stream(drawn).map(d -> below(d, observed)).sum() / drawn.length;
        if (share <= 0 || share >= 1) {
            throw new IllegalArgumentException("the resampled statistic lies on one side of the observed one");
        }
        double bias = NORMAL.inverseCumulativeProbability(share);
        Jackknife jackknife = Jackknife.of(statistic, samples);
        double z = NORMAL.inverseCumulativeProbability((1 + level) / 2);
        return new BcaInterval(
                Robust.quantileOfSorted(drawn, corrected(bias, -z, jackknife.acceleration())),
                Robust.quantileOfSorted(drawn, corrected(bias, z, jackknife.acceleration())),
                bias,
                jackknife.acceleration(),
                jackknife.standardError());
    }

    private static double below(double drawn, double observed) {
        double slack = 1e-12 * Math.abs(observed);
        return drawn < observed - slack ? 1 : drawn <= observed + slack ? 0.5 : 0;
    }

    private static double corrected(double bias, double z, double acceleration) {
        return NORMAL.cumulativeProbability(bias + (bias + z) / (1 - acceleration * (bias + z)));
    }

    private static double[] every(ToDoubleFunction<double[][]> statistic, double[] sample) {
        int n = sample.length;
        double[] drawn = new double[(int) Math.round(Math.pow(n, n))];
        double[] chosen = new double[n];
        for (int i = 0; i < drawn.length; i++) {
            int code = i;
            for (int j = 0; j < n; j++) {
                chosen[j] = sample[code % n];
                code /= n;
            }
            drawn[i] = statistic.applyAsDouble(new double[][] {chosen});
        }
        return drawn;
    }

    private static double[] random(
            ToDoubleFunction<double[][]> statistic, int resamples, long seed, double[][] samples) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] chosen = new double[samples.length][];
        double[] drawn = new double[resamples];
        for (int i = 0; i < resamples; i++) {
            for (int s = 0; s < samples.length; s++) {
                double[] sample = samples[s];
                chosen[s] = random.ints(sample.length, 0, sample.length)
                        .mapToDouble(k -> sample[k])
                        .toArray();
            }
            drawn[i] = statistic.applyAsDouble(chosen);
        }
        return drawn;
    }
}
