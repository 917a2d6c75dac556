package noctuary.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import noctuary.review.Chronicle.Sides;

/**
 * The nights' values on both sides of a change, measure by measure.
 *
 * @param absent measures without a value on one side, with the reason
 */
record Evidence(List<MeasureNights> measures, List<AbsentMeasure> absent) {

    /** @param pairs the same targets in two images */
    static Evidence of(Change change, List<DepthPair> pairs) {
        List<MeasureNights> measures = new ArrayList<>();
        List<AbsentMeasure> absent = new ArrayList<>();
        for (Gauge gauge : Gauges.all()) {
            String unfit = gauge.unfit().apply(change).orElse("");
            if (!unfit.isEmpty()) {
                absent.add(new AbsentMeasure(gauge.measure(), sentence(unfit)));
                continue;
            }
            MeasureNights nights = nights(gauge, change);
            if (nights.before().isEmpty() || nights.after().isEmpty()) {
                absent.add(new AbsentMeasure(gauge.measure(), why(gauge, change)));
            } else {
                measures.add(nights);
            }
        }
        DepthNights.of(change, pairs)
                .ifPresentOrElse(
                        measures::add, () -> absent.add(new AbsentMeasure(Gauges.DEPTH, DepthNights.why(pairs))));
        return new Evidence(Primary.named(change, measures), absent);
    }

    private static MeasureNights nights(Gauge gauge, Change change) {
        List<EntryNight> before = readable(gauge, change.before());
        List<EntryNight> after = readable(gauge, change.after());
        boolean many = Math.min(before.size(), after.size()) >= gauge.shownUnlikeFrom();
        Sides sides = many
                ? Chronicle.alike(before, after, gauge.likeness())
                : Chronicle.shared(before, after, gauge.likeness());
        return new MeasureNights(gauge.measure(), false, values(gauge, sides.before()), values(gauge, sides.after()));
    }

    private static List<EntryNight> readable(Gauge gauge, Side side) {
        Stream<EntryNight> further = gauge.ofLight() ? side.alikeInLight().stream() : Stream.empty();
        return Stream.concat(side.nights().stream(), further)
                .sorted(Comparator.comparing(EntryNight::night).thenComparing(EntryNight::slug))
                .filter(n -> n.reading(gauge.measure()).value().isPresent())
                .toList();
    }

    private static List<NightValue> values(Gauge gauge, List<EntryNight> nights) {
        return nights.stream().map(n -> value(n, n.reading(gauge.measure()))).toList();
    }

    private static NightValue value(EntryNight night, Reading reading) {
        return NightValue.of(night, reading.value().orElseThrow(), reading.frames());
    }

    /** Which side has nothing, and what its nights say. */
    private static String why(Gauge gauge, Change change) {
        boolean before = readable(gauge, change.before()).isEmpty();
        boolean after = readable(gauge, change.after()).isEmpty();
        if (!before && !after) {
            return sentence("no nights on both sides are alike in " + gauge.alikeIn());
        }
        Set<String> reasons = new LinkedHashSet<>();
        if (before) {
            change.before()
                    .nights()
                    .forEach(n -> reasons.add(n.reading(gauge.measure()).why()));
        }
        if (after) {
            change.after()
                    .nights()
                    .forEach(n -> reasons.add(n.reading(gauge.measure()).why()));
        }
        String where = before && after ? "on either side" : before ? "before" : "after";
        return sentence(reasons.isEmpty() ? "no nights " + where : String.join("; ", reasons) + " (" + where + ")");
    }

    static String sentence(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }
}
