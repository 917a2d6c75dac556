package noctuary.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Judges every entry of a journal, each against the other nights. */
final class LimitReports {
    private final Map<String, List<Night>> byRig;

    /** What an entry gives to judge others by, ready once: every entry asks all others of its rig. */
    private record Night(
            EntryContext entry,
            Set<String> filters,
            OptionalDouble seeing,
            OptionalDouble skyRate,
            OptionalDouble totalSeconds) {
        static Night of(EntryContext entry) {
            return new Night(
                    entry,
                    entry.filters(),
                    entry.traits()
                            .sharpness()
                            .map(SharpnessBudget::seeingAtZenith)
                            .orElseGet(OptionalDouble::empty),
                    entry.traits().known().skyRate(),
                    entry.traits().known().totalSeconds());
        }
    }

    private LimitReports(List<EntryContext> entries) {
        this.byRig = entries.parallelStream()
                .map(Night::of)
                .collect(Collectors.groupingBy(n -> n.entry().rigId()));
    }

    /** By slug. */
    static Map<String, LimitReport> of(List<EntryContext> entries) {
        LimitReports reports = new LimitReports(entries);
        List<LimitReport> judged = entries.parallelStream().map(reports::report).toList();
        Map<String, LimitReport> all = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            all.put(entries.get(i).slug(), judged.get(i));
        }
        return all;
    }

    private LimitReport report(EntryContext entry) {
        Optional<Sharpness> sharp = entry.traits().sharpness();
        Depth deep = entry.traits().known();
        return new LimitReport(
                sharp.map(SharpnessBudget::of), DepthBudget.of(deep), deep.whyNoNoise(), findings(entry, sharp, deep));
    }

    private List<Finding> findings(EntryContext entry, Optional<Sharpness> sharp, Depth deep) {
        List<Limit> limits = new ArrayList<>();
        sharp.ifPresent(s -> {
            limits.addAll(SharpnessLimits.of(s, usualSeeing(entry)));
            s.corners().ifPresent(c -> limits.addAll(CornerLimits.of(c, s.spacingErrorMm())));
        });
        limits.addAll(DepthLimits.of(deep, usualSky(entry), usualExposure(entry)));
        limits.addAll(ResidueLimits.of(deep));
        List<Finding> standing = limits.stream()
                .filter(Limit::standsOut)
                .sorted(Limit.LARGEST_FIRST)
                .map(Limit::finding)
                .toList();
        boolean troubled = !entry.sheet().observations().isEmpty();
        return standing.isEmpty() && sharp.isPresent() && !troubled ? List.of(nothing(sharp.get(), deep)) : standing;
    }

    private static Finding nothing(Sharpness sharp, Depth deep) {
        List<String> unknown = new ArrayList<>();
        unknown.addAll(unknown(SharpnessBudget.of(sharp)));
        DepthBudget.of(deep)
                .ifPresentOrElse(b -> unknown.addAll(unknown(b)), () -> unknown.add("the noise of one exposure"));
        String but = unknown.isEmpty() ? "" : " Not known, and so not judged: " + Words.list(unknown) + ".";
        return new Finding(
                "limit-none",
                "Nothing stands out: nothing that could be removed takes a tenth of star width or noise." + but,
                "",
                Words.say("stars of %s as the pixels show them", Words.arcsec(sharp.shownArcsec())));
    }

    private static List<String> unknown(Budget budget) {
        return budget.terms().stream()
                .filter(t -> t.amount().isEmpty())
                .map(Term::label)
                .toList();
    }

    private Usual usualSeeing(EntryContext entry) {
        return usual(entry, false, Night::seeing);
    }

    private Usual usualSky(EntryContext entry) {
        return usual(entry, true, Night::skyRate);
    }

    private Usual usualExposure(EntryContext entry) {
        return usual(entry, true, Night::totalSeconds);
    }

    /** @param alike whether only nights through the same filters count */
    private Usual usual(EntryContext entry, boolean alike, Function<Night, OptionalDouble> value) {
        Set<String> filters = entry.filters();
        double[] others = new double[byRig.get(entry.rigId()).size()];
        int found = 0;
        for (Night other : byRig.get(entry.rigId())) {
            OptionalDouble v = value.apply(other);
            if (v.isPresent()
                    && v.getAsDouble() > 0
                    && (!alike || other.filters().equals(filters))
                    && entry.sameRigOtherNight(other.entry())) {
                others[found++] = v.getAsDouble();
            }
        }
        return new Usual(Arrays.copyOf(others, found));
    }
}
