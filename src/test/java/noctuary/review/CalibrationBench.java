package noctuary.review;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import noctuary.review.SimulatedJournal.Plan;

/**
 * How often a review flatters, and how often it sees, on simulated journals; run as a main class. The first argument is the
 * number of journals a row, 2000 unless given.
 */
final class CalibrationBench {
    private CalibrationBench() {}

    public static void main(String[] arguments) {
        int journals = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        print(
                "%-26s %7s %7s %7s %8s %8s %8s | %7s %7s %7s %7s %7s | %7s %7s%n",
                "nights, true gain",
                "alarms",
                "better",
                "alone",
                "covers",
                "judged",
                "(n)",
                "rank",
                "means",
                "logs",
                "logsHlm",
                "too few",
                "naive",
                "nvAny");
        random(journals, 0);
        for (int nights : new int[] {2, 3, 4, 5, 6, 8, 12, 20}) {
            row(nights + " and " + nights, new Plan(nights, nights, 0, false), journals);
        }
        row("4 and 12", new Plan(4, 12, 0, false), journals);
        row("12 pairs by target", new Plan(12, 12, 0, true), journals);
        random(journals, 0.2);
        row("12 and 12", new Plan(12, 12, 0.2, false), journals);
        row("12 pairs by target", new Plan(12, 12, 0.2, true), journals);
    }

    /** Any number of nights from 2 to 20 on either side. */
    private static void random(int journals, double gain) {
        Tally sum = IntStream.range(0, journals)
                .parallel()
                .mapToObj(i -> {
                    SplittableRandom random = new SplittableRandom(i);
                    int before = random.nextInt(2, 21);
                    return Tally.of(new Plan(before, random.nextInt(2, 21), gain, false), random.nextLong());
                })
                .reduce(Tally.NONE, Tally::plus);
        print("2 to 20", gain, sum);
    }

    private static void row(String name, Plan plan, int journals) {
        Tally sum = IntStream.range(0, journals)
                .parallel()
                .mapToObj(i -> Tally.of(plan, 1_000_003L * i + plan.before()))
                .reduce(Tally.NONE, Tally::plus);
        print(name, plan.gain(), sum);
    }

    private static void print(String name, double gain, Tally t) {
        print(
                "%-26s %7s %7s %7s %8s %8s %8d | %7s %7s %7s %7s %7s | %7s %7s%n",
                name + String.format(Locale.ROOT, ", %.0f %%", 100 * gain),
                share(t.alarms(), t.journals()),
                share(t.better(), t.journals()),
                share(t.alone(), t.journals()),
                share(t.covered(), t.intervals()),
                share(t.judgedCovered(), t.judged()),
                t.judged(),
                share(t.rank(), t.journals()),
                share(t.relabelled(), t.journals()),
                share(t.logs(), t.journals()),
                share(t.logsHolm(), t.journals()),
                share(t.tooFew() + t.confounded(), t.journals()),
                share(t.naive(), t.journals()),
                share(t.naiveAny(), t.journals()));
    }

    private static String share(int part, int all) {
        return all == 0 ? "-" : String.format(Locale.ROOT, "%.1f", 100.0 * part / all);
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
