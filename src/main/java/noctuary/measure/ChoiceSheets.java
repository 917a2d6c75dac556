package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import noctuary.entry.Entry;
import noctuary.measure.ChoiceSheet.Use;

/** Gathers the steps of all versions by what they are called. */
public final class ChoiceSheets {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])[-+]?\\d+(?:\\.\\d+)?(?![\\w.]*\\d)");
    private static final Comparator<Use> OLDEST_FIRST = Comparator.comparing(
                    (Use u) -> u.entry().night().value().orElse(LocalDate.MIN))
            .thenComparing(u -> u.entry().entry().slug())
            .thenComparing(u -> u.version().version().name());

    private ChoiceSheets() {}

    /**
     * In the order in which the steps usually come.
     *
     * @param versions by slug
     */
    public static List<ChoiceSheet> of(List<EntrySheet> entries, Map<String, List<VersionSheet>> versions) {
        Map<String, List<Use>> uses = new TreeMap<>();
        Map<String, List<Double>> places = new TreeMap<>();
        for (EntrySheet entry : entries) {
            for (VersionSheet version : versions.getOrDefault(entry.entry().slug(), List.of())) {
                List<Entry.Step> steps = version.version().steps();
                for (int i = 0; i < steps.size(); i++) {
                    String name = steps.get(i).choice().strip().toLowerCase(Locale.ROOT);
                    places.computeIfAbsent(name, n -> new ArrayList<>()).add((i + 0.5) / steps.size());
                    uses.computeIfAbsent(name, n -> new ArrayList<>())
                            .add(use(entry, version, steps.get(i).setting(), steps.size() == 1));
                }
            }
        }
        return uses.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, List<Use>> e) -> mean(places.get(e.getKey())))
                        .thenComparing(Map.Entry::getKey))
                .map(e -> new ChoiceSheet(
                        e.getKey(), e.getValue().stream().sorted(OLDEST_FIRST).toList()))
                .toList();
    }

    private static Use use(EntrySheet entry, VersionSheet version, String setting, boolean alone) {
        return new Use(entry, version, setting, strength(setting), alone);
    }

    /** The first number in a setting such as {@code asinh 12} or {@code 0.3}. */
    static OptionalDouble strength(String setting) {
        Matcher number = NUMBER.matcher(setting);
        return number.find() ? OptionalDouble.of(Double.parseDouble(number.group())) : OptionalDouble.empty();
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    /** The weakest setting so far whose noise came down to {@code ratio} or below. */
    public static Optional<Use> gentlest(ChoiceSheet choice, double ratio) {
        return choice.uses().stream()
                .filter(u -> u.strength().isPresent() && u.noiseRatio().orElse(Double.MAX_VALUE) <= ratio)
                .min(Comparator.comparingDouble((Use u) -> u.strength().getAsDouble())
                        .thenComparing(OLDEST_FIRST));
    }
}
