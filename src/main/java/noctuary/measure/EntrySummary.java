package noctuary.measure;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.keep.Packing;
import noctuary.measure.EntrySheet.Exposed;

/** What is wanted of every entry at each render; components as {@link EntrySheet} names them. */
record EntrySummary(
        Fact<String> target,
        Fact<LocalDate> night,
        List<LocalDate> nights,
        Map<Figure, Quantity> numbers,
        Map<String, OptionalDouble> secondsByFilter,
        List<Exposed> exposed,
        int timeless,
        List<Observation> observations,
        FrameReport.Spread fwhmSpreadArcsec,
        Optional<String> scaleFrom,
        Optional<ShownFile> shown,
        List<Problem> problems) {
    static final Packing<EntrySummary> PACKING = Packing.of(EntrySummary.class);

    EntrySummary {
        nights = List.copyOf(nights);
        secondsByFilter = Collections.unmodifiableMap(new LinkedHashMap<>(secondsByFilter));
        problems = List.copyOf(problems);
    }

    static EntrySummary of(
            Fact<String> target,
            Fact<LocalDate> night,
            List<LocalDate> nights,
            EntryFiles files,
            List<Problem> problems) {
        Map<Figure, Quantity> numbers = new EnumMap<>(Figure.class);
        files.figures().forEach((figure, fact) -> fact.value().ifPresent(q -> numbers.put(figure, q)));
        Map<String, OptionalDouble> seconds = new LinkedHashMap<>();
        files.exposureByFilter()
                .forEach((filter, fact) -> seconds.put(
                        filter, fact.map(q -> OptionalDouble.of(q.value())).orElse(OptionalDouble.empty())));
        List<FrameSheet> counted =
                files.frames().stream().filter(FrameSheet::counted).toList();
        List<Exposed> exposed =
                counted.stream().flatMap(f -> exposed(f).stream()).toList();
        return new EntrySummary(
                target,
                night,
                nights,
                numbers,
                seconds,
                exposed,
                files.courses().isEmpty() ? 0 : counted.size() - exposed.size(),
                files.courses().stream().flatMap(c -> c.observations().stream()).toList(),
                StarSpread.fwhmArcsec(StarFigures.sources(files.frames(), files.stack())),
                scaleFrom(files),
                files.shown().map(ShownFile::of),
                problems);
    }

    private static Optional<Exposed> exposed(FrameSheet frame) {
        return frame.report()
                .taken()
                .map(taken ->
                        new Exposed(taken, frame.report().exposureSeconds().orElse(0)));
    }

    private static Optional<String> scaleFrom(EntryFiles files) {
        Fact<Quantity> scale = files.figures().get(Figure.IMAGE_SCALE);
        if (scale == null || scale.value().isEmpty()) {
            return Optional.empty();
        }
        Optional<String> measured = files.shown()
                .map(FrameSheet::report)
                .flatMap(FrameReport::imageScale)
                .map(FrameReport.Scale::from);
        return measured.isPresent() ? measured : Optional.of(restsOnTyped(scale) ? "rig" : "header optics");
    }

    private static boolean restsOnTyped(Fact<Quantity> fact) {
        Origin origin = ((Fact.Known<Quantity>) fact).reading().origin();
        return origin instanceof Origin.Typed
                || origin instanceof Origin.Derived derived
                        && derived.inputs().stream().anyMatch(input -> input.origin() instanceof Origin.Typed);
    }
}
