package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.FrameSheet;
import noctuary.stats.Robust;
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
                .flatMap(e -> e.sheet().courses().stream()
                        .flatMap(course ->
                                FocusNight.of(e.slug(), course, e.sheet().frames()).stream()))
                .sorted(Comparator.comparing(FocusNight::night).thenComparing(FocusNight::slug))
                .toList();
    }

    /** Focuser position over temperature, a night each; absent where the slope could be chance. */
    private static OptionalDouble steps(List<EntryContext> entries) {
        List<double[]> points = entries.stream()
                .filter(e -> e.sheet().night().value().isPresent())
                .sorted(Comparator.comparing(
                        (EntryContext e) -> e.sheet().night().value().orElse(LocalDate.MAX)))
                .flatMap(e -> point(e.lights()).stream())
                .toList();
        if (points.size() < FEWEST_NIGHTS) {
            return OptionalDouble.empty();
        }
        TheilSen line = TheilSen.fit(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
        return line.rises() || line.falls() ? OptionalDouble.of(line.slope()) : OptionalDouble.empty();
    }

    private static Optional<double[]> point(List<FrameSheet> lights) {
        List<FrameHeader> told = lights.stream()
                .flatMap(f -> f.header().stream())
                .filter(h -> h.focuserPosition().isPresent()
                        && FocusNight.temperature(h).isPresent())
                .toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        double celsius = Robust.median(told.stream()
                .mapToDouble(h -> FocusNight.temperature(h).orElseThrow())
                .toArray());
        double position = Robust.median(told.stream()
                .mapToDouble(h -> h.focuserPosition().map(Cited::value).orElseThrow())
                .toArray());
        return Optional.of(new double[] {celsius, position});
    }
}
