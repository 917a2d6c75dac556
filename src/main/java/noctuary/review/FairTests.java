package noctuary.review;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import noctuary.stats.Power;

/**
 * Proposes a fair test from the keeper's own scatter: power 80 % at the 5 % level, by Student's t. What shall be seen is
 * half of the difference seen so far, since first estimates flatter, and a tenth at the least.
 */
final class FairTests {
    private static final double POWER = 0.8;
    private static final double LEVEL = 0.05;
    private static final double LEAST = 0.1;
    private static final int MOST = 200;
    /** Fewest nights of each, and fewest pairs, for which an exact test can reach the level. */
    private static final int FEWEST_NIGHTS = 4;

    private static final int FEWEST_PAIRS = 6;
    private static final int FEWEST_FRAMES = 5;
    private static final int MOST_FRAMES = 60;

    private FairTests() {}

    /** Empty when the question is settled, or the scatter is not known yet. */
    static Optional<FairTest> of(Change change, MeasureReview primary) {
        boolean settled = primary.verdict() == Verdict.BETTER || primary.verdict() == Verdict.WORSE;
        if (!settled && change.kind() == ChangeKind.CHOICE) {
            return ofChoice(change, primary);
        }
        OptionalDouble nights = OwnScatter.ofNights(primary.nights());
        if (settled || nights.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble frames = OwnScatter.ofFrames(change);
        boolean within = change.kind() == ChangeKind.WAY && frames.isPresent();
        double wanted = wanted(primary);
        double perNight = framesForNight(nights.getAsDouble(), frames);
        OptionalInt count = within
                ? Power.pairs(wanted / (frames.getAsDouble() * Math.sqrt(2 / perNight)), POWER, LEVEL, MOST)
                : Power.perSide(wanted / nights.getAsDouble(), POWER, LEVEL, MOST);
        if (count.isEmpty()) {
            return Optional.empty();
        }
        int least = Math.max(within ? FEWEST_PAIRS : FEWEST_NIGHTS, count.getAsInt());
        double scatter = within ? frames.getAsDouble() : nights.getAsDouble();
        return Optional.of(test(change, primary, new Plan(least, (int) perNight, within, scatter, wanted)));
    }

    private record Plan(int nights, int frames, boolean within, double scatter, double wanted) {}

    /** Two versions of one stack are a pair, and need no other sky; how such pairs scatter is known only from pairs. */
    private static Optional<FairTest> ofChoice(Change change, MeasureReview primary) {
        double wanted = wanted(primary);
        OptionalDouble scatter = OwnScatter.ofPairs(primary.nights());
        OptionalInt pairs = scatter.isPresent() && scatter.getAsDouble() > 0
                ? Power.pairs(wanted / scatter.getAsDouble(), POWER, LEVEL, MOST)
                : OptionalInt.of(FEWEST_PAIRS);
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        int entries = Math.max(FEWEST_PAIRS, pairs.getAsInt());
        String choice = change.part().orElseThrow();
        return Optional.of(new FairTest(
                "What does " + choice + " do to a picture?",
                "",
                entries,
                1,
                true,
                100 * scatter.orElse(0),
                100 * wanted,
                sentence(choice, entries, scatter, wanted)));
    }

    private static String sentence(String choice, int entries, OptionalDouble scatter, double wanted) {
        String how = "Make two versions of one stack, one with " + choice
                + " and one without, all other steps alike, for " + entries + " entries. ";
        return how
                + (scatter.isPresent()
                        ? String.format(
                                Locale.ROOT,
                                "Your own pairs scatter by %.0f %%; a difference of %.0f %% would then be seen four times in five.",
                                100 * scatter.getAsDouble(),
                                100 * wanted)
                        : "How much such pairs scatter is not known yet; fewer could not tell anything from chance.");
    }

    private static double wanted(MeasureReview primary) {
        double seen = primary.shift().isPresent() && primary.before().orElse(0) != 0
                ? Math.abs(primary.shift().getAsDouble() / primary.before().getAsDouble())
                : 0;
        return Math.max(LEAST, seen / 2);
    }

    /** So many that the frames' own scatter adds little to the night's: a quarter of it. */
    private static double framesForNight(double nights, OptionalDouble frames) {
        double enough = frames.isPresent() ? Math.ceil(16 * Math.pow(frames.getAsDouble() / nights, 2)) : 10;
        return Math.min(MOST_FRAMES, Math.max(FEWEST_FRAMES, enough));
    }

    private static FairTest test(Change change, MeasureReview primary, Plan plan) {
        String target = target(change);
        String label = primary.nights().measure().label();
        String question = "Is the " + Character.toLowerCase(label.charAt(0)) + label.substring(1) + " better "
                + (change.kind() == ChangeKind.WAY
                        ? "this way than before?"
                        : "with " + change.after().name() + " than with "
                                + change.before().name() + "?");
        return new FairTest(
                question,
                target,
                plan.nights(),
                plan.frames(),
                plan.within(),
                100 * plan.scatter(),
                100 * plan.wanted(),
                sentence(target, plan));
    }

    private static String sentence(String target, Plan plan) {
        String what = target.isEmpty() ? "the same target" : target;
        String how = plan.within()
                ? String.format(
                        Locale.ROOT,
                        "Take %s on %d nights and change over every few frames within each, %d frames either way",
                        what,
                        plan.nights(),
                        plan.frames())
                : String.format(
                        Locale.ROOT,
                        "Take %s on %d nights either way, in turn, one night so and the next otherwise, "
                                + "at least %d frames each night",
                        what,
                        plan.nights(),
                        plan.frames());
        return how
                + String.format(
                        Locale.ROOT,
                        ", always with the same filter and exposure, higher than 42° (airmass below 1.5), the Moon"
                                + " alike. Your own values scatter by %.0f %% from %s; a difference of %.0f %% would"
                                + " then be seen four times in five.",
                        100 * plan.scatter(),
                        plan.within() ? "frame to frame" : "night to night",
                        100 * plan.wanted());
    }

    /** On both sides rather than on one, then the one taken most often. */
    private static String target(Change change) {
        Map<String, int[]> nights = new TreeMap<>();
        count(change.before(), 0, nights);
        count(change.after(), 1, nights);
        return nights.entrySet().stream()
                .max(Comparator.comparingInt((Map.Entry<String, int[]> e) -> Math.min(e.getValue()[0], e.getValue()[1]))
                        .thenComparingInt(e -> e.getValue()[0] + e.getValue()[1])
                        .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static void count(Side side, int at, Map<String, int[]> nights) {
        Stream<String> targets = side.nights().stream().map(EntryNight::target).filter(t -> !t.isEmpty());
        targets.forEach(t -> nights.computeIfAbsent(t, k -> new int[2])[at]++);
    }
}
