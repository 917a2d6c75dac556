package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import noctuary.measure.Figure;
import noctuary.measure.RigSheet;
import noctuary.rig.RigFigures;
import noctuary.stats.Robust;

/** Lays the nights beside the rigs. */
final class RigDesks {
    /** Nights below which a distribution of widths is none. */
    private static final int FEWEST_NIGHTS = 3;

    private final List<EntryContext> entries;
    private final Optional<RigDesk.Spread> seeing;
    private final Swaps swaps;

    private RigDesks(List<EntryContext> entries, Map<String, RigSheet> rigs) {
        this.entries = entries;
        this.seeing = seeing();
        this.swaps = new Swaps(
                rigs, entries, seeing.map(s -> OptionalDouble.of(s.median())).orElseGet(OptionalDouble::empty));
    }

    /** By rig. */
    static Map<String, RigDesk> of(List<EntryContext> entries, Map<String, RigSheet> rigs) {
        RigDesks desks = new RigDesks(entries, rigs);
        List<Map.Entry<String, RigDesk>> found = rigs.entrySet().parallelStream()
                .map(rig -> Map.entry(rig.getKey(), desks.desk(rig.getKey(), rig.getValue())))
                .toList();
        Map<String, RigDesk> all = new LinkedHashMap<>();
        found.forEach(desk -> all.put(desk.getKey(), desk.getValue()));
        return all;
    }

    private RigDesk desk(String id, RigSheet rig) {
        List<EntryContext> own =
                entries.stream().filter(e -> e.rigId().equals(id)).toList();
        RigFigures figures = rig.latest().figures();
        Optional<RigDesk.Spread> sampling = figures.imageScaleArcsecPerPx().isPresent()
                ? seeing.map(s -> scaled(s, figures.imageScaleArcsecPerPx().getAsDouble()))
                : Optional.empty();
        List<FocalLengths.Length> lengths = FocalLengths.of(own);
        Optional<RigDesk.Focal> focal = FocalLengths.focal(rig, lengths);
        List<Finding> findings = new ArrayList<>();
        sampling.flatMap(s -> SamplingAdvice.of(s, seeing.orElseThrow(), figures))
                .ifPresent(findings::add);
        findings.addAll(FocalLengths.findings(focal, lengths));
        Optional<RigDesk.ByStars> byStars = focal.isPresent() ? Optional.empty() : SharedStars.focal(own, entries);
        boolean none = focal.isEmpty() && byStars.isEmpty() && !own.isEmpty();
        return new RigDesk(
                seeing,
                sampling,
                focal,
                byStars,
                none ? SharedStars.whyNone(own) : "",
                shapes(own),
                swaps.around(id),
                Warmth.sentence(figures),
                findings);
    }

    /** Widths of all nights with a width, whatever the rig: the air is the same for all. */
    private Optional<RigDesk.Spread> seeing() {
        double[] widths = entries.stream()
                .collect(Collectors.groupingBy(e -> e.sheet().night().value().orElse(LocalDate.MIN)))
                .values()
                .stream()
                .map(night -> Robust.median(night.stream()
                        .map(e -> e.number(Figure.FWHM_ARCSEC))
                        .filter(OptionalDouble::isPresent)
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .toArray()))
                .filter(Double::isFinite)
                .mapToDouble(v -> v)
                .sorted()
                .toArray();
        return widths.length < FEWEST_NIGHTS ? Optional.empty() : Optional.of(spread(widths));
    }

    private static RigDesk.Spread spread(double[] sorted) {
        return new RigDesk.Spread(
                sorted.length,
                Robust.quantileOfSorted(sorted, 0.16),
                Robust.quantileOfSorted(sorted, 0.5),
                Robust.quantileOfSorted(sorted, 0.84));
    }

    private static RigDesk.Spread scaled(RigDesk.Spread arcsec, double perPx) {
        return new RigDesk.Spread(
                arcsec.nights(), arcsec.low() / perPx, arcsec.median() / perPx, arcsec.high() / perPx);
    }

    private static List<RigDesk.Shape> shapes(List<EntryContext> own) {
        return own.stream()
                .filter(e -> e.sheet().night().value().isPresent())
                .sorted(Comparator.comparing(
                                (EntryContext e) -> e.sheet().night().value().orElseThrow())
                        .reversed())
                .flatMap(e -> e.traits().sharpness().flatMap(Sharpness::corners).map(c -> shape(e, c)).stream())
                .toList();
    }

    private static RigDesk.Shape shape(EntryContext e, Corners c) {
        return new RigDesk.Shape(
                e.slug(),
                e.sheet().night().value().orElseThrow(),
                c.centrePx(),
                c.risePx(),
                c.riseErrorPx(),
                c.tiltPx(),
                c.tiltErrorPx(),
                CornerLimits.says(c));
    }
}
