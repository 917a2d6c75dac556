package noctuary.review;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import noctuary.review.SimulatedJournal.Plan;

/**
 * How often a review flatters, and how often it sees, on simulated journals; run as a main class. Rows are printed as they
 * are done, those asked about most first. The first argument is the
 * number of journals a row, 2000 unless given; the second, if any, the beginning of the rows wanted.
 */
final class CalibrationBench {
    private CalibrationBench() {}

    public static void main(String[] arguments) {
        int journals = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        String wanted = arguments.length > 1 ? arguments[1] : "";
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
        row(wanted, 0, journals);
        row(wanted, "12 pairs by target", new Plan(12, 12, 0, true), journals);
        row(wanted, "12 and 12", new Plan(12, 12, 0.2, false), journals);
        row(wanted, "12 pairs by target", new Plan(12, 12, 0.2, true), journals);
        for (int nights : new int[] {2, 3, 4, 5, 6, 8, 12, 20}) {
            row(wanted, nights + " and " + nights, new Plan(nights, nights, 0, false), journals);
        }
        row(wanted, "4 and 12", new Plan(4, 12, 0, false), journals);
        row(wanted, 0.2, journals);
    }

    /** Any number of nights from 2 to 20 on either side. */
    private static void row(String wanted, double gain, int journals) {
        row(wanted, "2 to 20", gain, journals, i -> {
            SplittableRandom random = new SplittableRandom(i);
            int before = random.nextInt(2, 21);
            return Tally.of(new Plan(before, random.nextInt(2, 21), gain, false), random.nextLong());
        });
    }

    private static void row(String wanted, String name, Plan plan, int journals) {
        row(wanted, name, plan.gain(), journals, i -> Tally.of(plan, 1_000_003L * i + plan.before()));
    }

    private static void row(String wanted, String name, double gain, int journals, IntFunction<Tally> journal) {
        String head = name + String.format(Locale.ROOT, ", %.0f %%", 100 * gain);
        if (head.startsWith(wanted)) {
            print(
                    head,
                    IntStream.range(0, journals).parallel().mapToObj(journal).reduce(Tally.NONE, Tally::plus));
        }
    }

    private static void print(String name, Tally t) {
        print(
                "%-26s %7s %7s %7s %8s %8s %8d | %7s %7s %7s %7s %7s | %7s %7s%n",
                name,
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
        System.out.flush();
    }
}
