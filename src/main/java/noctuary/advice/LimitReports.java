package noctuary.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Judges every entry of a journal, each against the other nights. */
final class LimitReports {
    private final Map<String, List<EntryContext>> byRig;

    private LimitReports(List<EntryContext> entries) {
        this.byRig = entries.stream().collect(Collectors.groupingBy(EntryContext::rigId));
    }

    /** By slug. */
    static Map<String, LimitReport> of(List<EntryContext> entries) {
        LimitReports reports = new LimitReports(entries);
        Map<String, LimitReport> all = new LinkedHashMap<>();
        entries.forEach(entry -> all.put(entry.slug(), reports.report(entry)));
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
        return usual(
                entry,
                other -> true,
                other -> other.traits()
                        .sharpness()
                        .map(SharpnessBudget::seeingAtZenith)
                        .orElseGet(OptionalDouble::empty));
    }

    private Usual usualSky(EntryContext entry) {
        return usual(
                entry,
                other -> other.filters().equals(entry.filters()),
                other -> other.traits().known().skyRate());
    }

    private Usual usualExposure(EntryContext entry) {
        return usual(
                entry,
                other -> other.filters().equals(entry.filters()),
                other -> other.traits().known().totalSeconds());
    }

    private Usual usual(
            EntryContext entry, Predicate<EntryContext> alike, Function<EntryContext, OptionalDouble> value) {
        return new Usual(byRig.get(entry.rigId()).stream()
                .filter(entry::sameRigOtherNight)
                .filter(alike)
                .map(value)
                .filter(v -> v.isPresent() && v.getAsDouble() > 0)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray());
    }
}
