package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Where both sides stood: nights at a site, with a rig or through a filter that the other side never saw cannot say
 * anything about the change, and are set aside by that rule alone.
 *
 * @param apart what the sides share levels of, and what the measure feels: those levels are never mixed
 * @param against where the sides share nothing at all; those nights stay, to be shown
 */
record Ground(List<NightValue> before, List<NightValue> after, List<Influence> apart, List<Influence> against) {
    static Ground of(Set<Influence> changed, MeasureNights nights) {
        List<NightValue> before = nights.before();
        List<NightValue> after = nights.after();
        List<Influence> apart = new ArrayList<>();
        List<Influence> against = new ArrayList<>();
        for (Influence condition : List.of(Influence.SITE, Influence.RIG, Influence.FILTER, Influence.STEPS)) {
            if (changed.contains(condition)
                    || condition != Influence.RIG && !nights.measure().feels(condition)) {
                continue;
            }
            Function<NightValue, String> level = level(condition);
            Set<String> shared = levels(before, level);
            shared.retainAll(levels(after, level));
            if (shared.isEmpty()) {
                against.add(condition);
            } else {
                apart.add(condition);
                before = within(before, level, shared);
                after = within(after, level, shared);
            }
        }
        return new Ground(before, after, apart, against);
    }

    static Function<NightValue, String> level(Influence condition) {
        return switch (condition) {
            case SITE -> NightValue::site;
            case RIG -> NightValue::rig;
            case FILTER -> NightValue::filter;
            case TARGET -> NightValue::target;
            case STEPS -> NightValue::recipe;
            case AIRMASS, MOON, SEASON -> throw new IllegalArgumentException(condition + " has no levels");
        };
    }

    private static Set<String> levels(List<NightValue> nights, Function<NightValue, String> level) {
        return nights.stream().map(level).collect(Collectors.toSet());
    }

    private static List<NightValue> within(
            List<NightValue> nights, Function<NightValue, String> level, Set<String> shared) {
        return nights.stream().filter(n -> shared.contains(level.apply(n))).toList();
    }
}
