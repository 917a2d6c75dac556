package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import noctuary.stats.CliffDelta;
import noctuary.stats.HodgesLehmann;
import noctuary.stats.Robust;
import noctuary.stats.ShiftTest;

/**
 * One measure, compared, before it is known what the measures together allow to be said.
 *
 * @param needed conditions to take out before a verdict
 */
record Candidate(
        MeasureNights nights, Scale scale, Ground ground, Design design, Tested tested, List<Influence> needed) {
    static final double LEVEL = 0.95;

    private static final long SEED = 20_260_101;

    static Candidate of(Set<Influence> changed, MeasureNights nights, Tested.Before before) {
        Scale scale = Scale.of(nights);
        Measure measure = nights.measure();
        Ground ground = Ground.of(changed, nights);
        Merging merging = new Merging(measure, scale);
        List<Unit> units = merging.units(ground.before(), ground.after());
        Design design = Design.of(measure, ground.apart(), units, merging);
        if (design.blocks().isEmpty()) {
            return new Candidate(nights, scale, ground, design, Tested.NOTHING, List.of());
        }
        List<Influence> conditions = Adjustment.candidates(measure, design);
        List<Influence> needed = conditions.stream().filter(measure::follows).toList();
        List<Influence> taken = new ArrayList<>(conditions);
        while (!Adjustment.affords(design, taken.size())) {
            taken.remove(taken.size() - 1);
        }
        List<Influence> out = needed.isEmpty() || !taken.containsAll(needed) ? taken : needed;
        Tested tested = before.of(
                nights,
                () -> new Tested(
                        Optional.of(ShiftTest.of(design.blocks(scale), LEVEL, SEED)),
                        Adjustment.of(design, scale, out)));
        return new Candidate(nights, scale, ground, design, tested, needed);
    }

    Optional<ShiftTest> test() {
        return tested.test();
    }

    Optional<Adjustment> adjusted() {
        return tested.adjusted();
    }

    /** Whether the adjusted shift is the one to go by. */
    boolean decides() {
        return !needed.isEmpty()
                && adjusted().filter(a -> a.taken().containsAll(needed)).isPresent();
    }

    /** Whether the shift to go by is free of what the measure follows. */
    boolean separates() {
        return needed.isEmpty() || decides();
    }

    /** Two-sided, of the shift to go by. */
    double p() {
        return decides()
                ? adjusted().orElseThrow().p()
                : test().map(ShiftTest::p).orElse(1.0);
    }

    double smallestP() {
        return design.smallestP();
    }

    /** Conditions that the measure follows and that some night does not know. */
    List<Influence> unknown() {
        return nights.measure().feels().stream()
                .filter(i -> i == Influence.AIRMASS || i == Influence.MOON)
                .filter(i -> !Overlap.known(design.units().toList(), i))
                .toList();
    }

    /** Nights on a side; those compared, or all when none could be. */
    int count(boolean after) {
        return design.blocks().isEmpty() ? (int) distinct(after) : design.count(after);
    }

    int setAside() {
        return (int) (distinct(false) + distinct(true)) - count(false) - count(true);
    }

    private long distinct(boolean after) {
        return (after ? nights.after() : nights.before())
                .stream().map(NightValue::night).distinct().count();
    }

    /** Cliff's delta of after over before; empty without nights on both sides. */
    OptionalDouble cliff() {
        double[] before = values(false);
        double[] after = values(true);
        return before.length == 0 || after.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(CliffDelta.of(after, before));
    }

    /** Middle of the nights on a side, in the unit. */
    OptionalDouble middle(boolean after) {
        double[] values = values(after);
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(values));
    }

    /** Of those compared, or of all when none could be. */
    private double[] values(boolean after) {
        return design.blocks().isEmpty()
                ? (after ? nights.after() : nights.before())
                        .stream().mapToDouble(NightValue::value).toArray()
                : design.nights().stream()
                        .flatMap(List::stream)
                        .filter(u -> u.after() == after)
                        .mapToDouble(u -> u.night().value())
                        .toArray();
    }

    Optional<Shift> plain() {
        return test().map(t -> scale.shift(
                HodgesLehmann.shift(design.blocks(scale)),
                t.low(),
                t.high(),
                t.coverage(),
                t.p(),
                middle(false).orElseThrow()));
    }

    Optional<Shift> adjustedShift() {
        return adjusted()
                .map(a -> scale.shift(
                        a.shift().difference(),
                        a.shift().low(),
                        a.shift().high(),
                        LEVEL,
                        a.p(),
                        middle(false).orElseThrow()));
    }
}
