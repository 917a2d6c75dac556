package noctuary.match;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Success, error and processor time of the alignment on simulated pairs, and false matches on unrelated ones; run as a
 * main class. The first argument is the number of pairs a row, 300 unless given. Pairs whose error is not below 0.15 px
 * are listed with what could be had at best ({@link BestFit}).
 */
final class AlignmentBench {
    static final long WHOLE_SEED = 2;
    static final long CAMERAS_SEED = 3;

    private static final double GOOD_PX = 1;
    /** What is asked of the error, pixels of the finer image. */
    private static final double ASKED_PX = 0.15;

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
        List<Outcome> outcomes = new ArrayList<>();
        Random random = new Random(seed);
        for (int i = 0; i < pairs; i++) {
            outcomes.add(Outcome.of(i, draw.apply(random)));
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d of %d within 1 px, %d refused; matched/shared %.2f; cpu ms median %.1f, 95th %.1f, most %.1f%n",
                name,
                count(outcomes, o -> o.errorPx() < GOOD_PX),
                pairs,
                count(outcomes, o -> Double.isInfinite(o.errorPx())),
                outcomes.stream().mapToDouble(Outcome::matchedShare).average().orElse(0),
                quantile(outcomes, Outcome::milliseconds, 0.5),
                quantile(outcomes, Outcome::milliseconds, 0.95),
                quantile(outcomes, Outcome::milliseconds, 1));
        line("  error of the transform", outcomes, Outcome::errorPx);
        line("  best fit of the same errors", outcomes, o -> o.best().drawnPx());
        line("  least error to be expected", outcomes, o -> o.best().expectedPx());
        line("  residual of the matched stars", outcomes, Outcome::residualPx);
        line("  residual to be expected", outcomes, o -> o.best().residualPx());
        outcomes.stream().filter(o -> !(o.errorPx() < ASKED_PX)).forEach(o -> System.out.println("    " + o.told()));
    }

    private static void line(String name, List<Outcome> outcomes, ToDoubleFunction<Outcome> px) {
        System.out.printf(
                Locale.ROOT,
                "%s, px of the finer image: rms %.3f, median %.3f, 99th %.3f; below %.2f in %d%n",
                name,
                Math.sqrt(outcomes.stream()
                        .mapToDouble(o -> Math.pow(px.applyAsDouble(o), 2))
                        .average()
                        .orElse(0)),
                quantile(outcomes, px, 0.5),
                quantile(outcomes, px, 0.99),
                ASKED_PX,
                count(outcomes, o -> px.applyAsDouble(o) < ASKED_PX));
    }

    private static double quantile(List<Outcome> outcomes, ToDoubleFunction<Outcome> of, double q) {
        double[] sorted = outcomes.stream().mapToDouble(of).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1.0, sorted.length * q)];
    }

    private static long count(List<Outcome> outcomes, Predicate<Outcome> of) {
        return outcomes.stream().filter(of).count();
    }

    /** What became of one pair; infinite errors where it was refused. */
    private record Outcome(
            int number,
            StarPairs pair,
            BestFit best,
            double errorPx,
            double residualPx,
            double matchedShare,
            double milliseconds) {

        static Outcome of(int number, StarPairs pair) {
            long start = CLOCK.getCurrentThreadCpuTime();
            Optional<Alignment> found = Alignment.find(pair.from(), pair.to());
            double milliseconds = (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
            return new Outcome(
                    number,
                    pair,
                    BestFit.of(pair),
                    found.map(pair::errorPx).orElse(Double.POSITIVE_INFINITY),
                    found.map(f -> f.rmsPx() * pair.finer()).orElse(Double.POSITIVE_INFINITY),
                    found.map(f -> f.matched() / (double) pair.shared().size()).orElse(0.0),
                    milliseconds);
        }

        String told() {
            return String.format(
                    Locale.ROOT,
                    "pair %d: %d and %d stars, %d shared, scale %.2f: error %.3f, best fit %.3f, to be expected %.3f,"
                            + " residual %.3f, matched/shared %.2f",
                    number,
                    pair.from().size(),
                    pair.to().size(),
                    pair.shared().size(),
                    pair.truth().scale(),
                    errorPx,
                    best.drawnPx(),
                    best.expectedPx(),
                    residualPx,
                    matchedShare);
        }
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
