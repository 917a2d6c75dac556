package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One value a night and side. Of a night with several targets the one counts that the other side has most nights of (that
 * very night first), then the one with most frames; its entries are averaged by their frames. The rule never looks at the
 * values.
 */
final class Merging {
    private final Measure measure;
    private final Scale scale;

    Merging(Measure measure, Scale scale) {
        this.measure = measure;
        this.scale = scale;
    }

    List<Unit> units(List<NightValue> before, List<NightValue> after) {
        List<Unit> units = new ArrayList<>();
        merged(before, after).forEach(n -> units.add(new Unit(n, false)));
        merged(after, before).forEach(n -> units.add(new Unit(n, true)));
        return units;
    }

    private List<NightValue> merged(List<NightValue> own, List<NightValue> other) {
        Map<LocalDate, List<NightValue>> byNight =
                own.stream().collect(Collectors.groupingBy(NightValue::night, TreeMap::new, Collectors.toList()));
        return byNight.values().stream().map(night -> one(night, other)).toList();
    }

    private NightValue one(List<NightValue> night, List<NightValue> other) {
        Map<String, List<NightValue>> bySubject =
                night.stream().collect(Collectors.groupingBy(this::subject, TreeMap::new, Collectors.toList()));
        return bySubject.values().stream()
                .max(Comparator.<List<NightValue>>comparingLong(v -> sameNight(v.get(0), other))
                        .thenComparingLong(v -> nights(v.get(0), other))
                        .thenComparingInt(Merging::frames))
                .map(this::average)
                .orElseThrow();
    }

    private String subject(NightValue value) {
        return value.target() + "\n" + (measure.follows(Influence.FILTER) ? value.filter() : "") + "\n"
                + (measure.follows(Influence.STEPS) ? value.recipe() : "");
    }

    private long sameNight(NightValue value, List<NightValue> other) {
        return other.stream()
                .filter(o -> o.night().equals(value.night()) && subject(o).equals(subject(value)))
                .count();
    }

    private long nights(NightValue value, List<NightValue> other) {
        return other.stream()
                .filter(o -> subject(o).equals(subject(value)))
                .map(NightValue::night)
                .distinct()
                .count();
    }

    private static int frames(List<NightValue> values) {
        return values.stream().mapToInt(NightValue::frames).sum();
    }

    /** Their mean on the measure's own scale, weighted by frames; conditions that one of them lacks stay unknown. */
    NightValue average(List<NightValue> values) {
        NightValue first = values.get(0);
        double value = scale.back(
                mean(values, v -> OptionalDouble.of(scale.of(v.value()))).orElseThrow());
        return new NightValue(
                first.slug(),
                first.night(),
                first.target(),
                first.rig(),
                first.site(),
                first.filter(),
                first.recipe(),
                value,
                frames(values),
                mean(values, NightValue::airmass),
                mean(values, NightValue::moonMagnitudes));
    }

    private static OptionalDouble mean(List<NightValue> values, Function<NightValue, OptionalDouble> part) {
        if (values.stream().anyMatch(v -> part.apply(v).isEmpty())) {
            return OptionalDouble.empty();
        }
        double sum = values.stream()
                .mapToDouble(v -> Math.max(v.frames(), 1) * part.apply(v).getAsDouble())
                .sum();
        return OptionalDouble.of(
                sum / values.stream().mapToInt(v -> Math.max(v.frames(), 1)).sum());
    }
}
