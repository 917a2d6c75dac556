package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.stats.TheilSen;

/** The refocus rules of all rigs. */
final class RefocusRules {
    private static final int FEWEST_NIGHTS = 6;

    private RefocusRules() {}

    /** By rig. */
    static Map<String, RefocusRule> of(List<EntryContext> entries) {
        Map<String, List<EntryContext>> byRig = new LinkedHashMap<>();
        entries.forEach(
                e -> byRig.computeIfAbsent(e.rigId(), k -> new ArrayList<>()).add(e));
        Map<String, RefocusRule> rules = new LinkedHashMap<>();
        byRig.forEach((rig, own) -> rules.put(rig, rule(own)));
        return rules;
    }

    private static RefocusRule rule(List<EntryContext> own) {
        List<FocusNight> nights = nights(own);
        List<String> besides = Stream.concat(
                        Cooling.sentence(nights).stream(), WidthByTemperature.sentence(own).stream())
                .toList();
        return RefocusRule.of(nights, steps(own), besides);
    }

    private static List<FocusNight> nights(List<EntryContext> entries) {
        return entries.stream()
                .flatMap(e -> e.traits().focus().stream())
                .sorted(Comparator.comparing(FocusNight::night).thenComparing(FocusNight::slug))
                .toList();
    }

    /** Focuser position over temperature, a night each; absent where the slope could be chance. */
    private static OptionalDouble steps(List<EntryContext> entries) {
        List<EntryTraits.Focuser> points = entries.stream()
                .filter(e -> e.sheet().night().value().isPresent())
                .sorted(Comparator.comparing(
                        (EntryContext e) -> e.sheet().night().value().orElse(LocalDate.MAX)))
                .flatMap(e -> e.traits().focuser().stream())
                .toList();
        if (points.size() < FEWEST_NIGHTS) {
            return OptionalDouble.empty();
        }
        TheilSen line = TheilSen.fit(
                points.stream().mapToDouble(EntryTraits.Focuser::celsius).toArray(),
                points.stream().mapToDouble(EntryTraits.Focuser::position).toArray());
        return line.rises() || line.falls() ? OptionalDouble.of(line.slope()) : OptionalDouble.empty();
    }
}
