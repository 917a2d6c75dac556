package noctuary.match;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/**
 * Success, error and processor time of the alignment on simulated pairs, and false matches on unrelated ones; run as a
 * main class. The first argument is the number of pairs a row, 300 unless given.
 */
final class AlignmentBench {
    static final long WHOLE_SEED = 2;
    static final long CAMERAS_SEED = 3;

    private static final double GOOD_PX = 1;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private AlignmentBench() {}

    public static void main(String[] arguments) {
        int pairs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        row("warm-up", pairs, 1, StarPairs::whole);
        row("whole field", pairs, WHOLE_SEED, StarPairs::whole);
        row("two cameras", pairs, CAMERAS_SEED, StarPairs::cameras);
        unrelated("unrelated, whole field", pairs, 4, StarPairs::whole);
        unrelated("unrelated, two cameras", pairs, 5, StarPairs::cameras);
    }

    private static void row(String name, int pairs, long seed, Function<Random, StarPairs> draw) {
        double[] errors = new double[pairs];
        double[] residuals = new double[pairs];
        double[] milliseconds = new double[pairs];
        int good = 0;
        int refused = 0;
        double shares = 0;
        Random random = new Random(seed);
        for (int i = 0; i < pairs; i++) {
            StarPairs pair = draw.apply(random);
            long start = CLOCK.getCurrentThreadCpuTime();
            Optional<Alignment> found = Alignment.find(pair.from(), pair.to());
            milliseconds[i] = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
            refused += found.isEmpty() ? 1 : 0;
            errors[i] = found.map(pair::errorPx).orElse(Double.POSITIVE_INFINITY);
            residuals[i] = found.map(f -> f.rmsPx() / Math.max(1, pair.truth().scale()))
                    .orElse(Double.NaN);
            good += errors[i] < GOOD_PX ? 1 : 0;
            shares +=
                    found.map(f -> f.matched() / (double) pair.shared().size()).orElse(0.0) / pairs;
            if (!(errors[i] < GOOD_PX)) {
                System.out.printf(
                        Locale.ROOT,
                        "  %d: %d and %d stars, %d shared, scale %.2f, error %.2f%n",
                        i,
                        pair.from().size(),
                        pair.to().size(),
                        pair.shared().size(),
                        pair.truth().scale(),
                        errors[i]);
            }
        }
        Arrays.sort(errors);
        Arrays.sort(residuals);
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s: %d of %d right, %d refused; error px median %.3f, 99th %.3f; residual median %.3f of the coarser;"
                        + " matched/shared %.2f; cpu ms median %.1f, 95th %.1f, most %.1f%n",
                name,
                good,
                pairs,
                refused,
                errors[pairs / 2],
                errors[pairs * 99 / 100],
                residuals[pairs / 2],
                shares,
                milliseconds[pairs / 2],
                milliseconds[pairs * 95 / 100],
                milliseconds[pairs - 1]);
    }

    private static void unrelated(String name, int pairs, long seed, Function<Random, StarPairs> draw) {
        int matched = 0;
        Random random = new Random(seed);
        double[] milliseconds = new double[pairs];
        for (int i = 0; i < pairs; i++) {
            StarPairs one = draw.apply(random);
            StarPairs other = draw.apply(random);
            long start = CLOCK.getCurrentThreadCpuTime();
            matched += Alignment.find(one.from(), other.to()).isPresent() ? 1 : 0;
            milliseconds[i] = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
        }
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s: %d of %d matched; cpu ms median %.1f, most %.1f%n",
                name,
                matched,
                pairs,
                milliseconds[pairs / 2],
                milliseconds[pairs - 1]);
    }
}
