package noctuary.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import noctuary.entry.Entry;
import noctuary.entry.Entry.TypedExposure;
import noctuary.entry.Typed;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin;
import noctuary.fact.Origin.Input;
import noctuary.fact.Printed;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;

/** Exposure in all and by filter: from the frames, else from the stack's header, else as typed. */
final class Exposures {
    static final String METHOD = "exposure";
    private static final String NO_FILTER = "no filter told";

    private final Entry entry;
    private final List<FrameSheet> counted;
    private final Optional<FrameSheet> stack;

    Exposures(Entry entry, List<FrameSheet> frames, Optional<FrameSheet> stack) {
        this.entry = entry;
        this.counted = frames.stream()
                .filter(FrameSheet::counted)
                .filter(f -> seconds(f).isPresent())
                .toList();
        this.stack = stack;
    }

    Voices voices() {
        return new Voices("exposure")
                .hear("the sum of the frames", counted.isEmpty() ? Optional.empty() : Optional.of(sum(counted)))
                .hear("the stack's header", stack.flatMap(this::stackReading))
                .hear("the note", entry.exposure().isEmpty() ? Optional.empty() : Optional.of(typed(entry.exposure())));
    }

    /** By filter, most exposure first, from the same origin as the total. */
    Map<String, Fact<Quantity>> byFilter() {
        Map<String, Reading<Quantity>> readings = new LinkedHashMap<>();
        Optional<Reading<Quantity>> stacked = stack.flatMap(this::stackReading);
        if (!counted.isEmpty()) {
            group(counted, Exposures::filter).forEach((filter, frames) -> readings.put(filter, sum(frames)));
        } else if (stacked.isPresent()) {
            readings.put(filter(stack.get()), stacked.get());
        } else {
            group(
                            entry.exposure(),
                            t -> t.value().filter().isEmpty()
                                    ? NO_FILTER
                                    : t.value().filter())
                    .forEach((filter, typed) -> readings.put(filter, typed(typed)));
        }
        Map<String, Fact<Quantity>> sorted = new LinkedHashMap<>();
        readings.entrySet().stream()
                .sorted((a, b) -> Double.compare(
                        b.getValue().value().value(), a.getValue().value().value()))
                .forEach(e -> sorted.put(e.getKey(), new Fact.Known<>(e.getValue(), List.of())));
        return sorted;
    }

    private static <T> Map<String, List<T>> group(List<T> all, Function<T, String> by) {
        Map<String, List<T>> groups = new LinkedHashMap<>();
        all.forEach(
                t -> groups.computeIfAbsent(by.apply(t), k -> new ArrayList<>()).add(t));
        return groups;
    }

    private static Optional<Double> seconds(FrameSheet frame) {
        return frame.header().flatMap(ExposureCards::totalSeconds).map(ExposureCards.Total::seconds);
    }

    private static String filter(FrameSheet frame) {
        return frame.measurement()
                .header()
                .flatMap(FrameHeader::filter)
                .map(Cited::value)
                .filter(f -> !f.isBlank())
                .orElse(NO_FILTER);
    }

    private static Reading<Quantity> sum(List<FrameSheet> frames) {
        long milliseconds = 0;
        List<Input> inputs = new ArrayList<>();
        for (FrameSheet frame : frames) {
            ExposureCards.Total total =
                    ExposureCards.totalSeconds(frame.header().orElseThrow()).orElseThrow();
            milliseconds += ExposureCards.milliseconds(total.seconds());
            inputs.add(new Input(
                    frame.name(),
                    Printed.of(total.seconds(), Unit.SECOND),
                    new Origin.Derived(total.formula(), METHOD, inputs(total, frame.name()))));
        }
        return new Reading<>(
                Quantity.of(milliseconds / 1000.0, Unit.SECOND),
                new Origin.Derived(
                        "sum over " + frames.size() + (frames.size() == 1 ? " frame" : " frames, each once"),
                        METHOD,
                        inputs));
    }

    private Optional<Reading<Quantity>> stackReading(FrameSheet sheet) {
        return sheet.measurement()
                .header()
                .flatMap(ExposureCards::totalSeconds)
                .map(total -> new Reading<>(
                        Quantity.of(total.seconds(), Unit.SECOND),
                        new Origin.Derived(total.formula(), METHOD, inputs(total, sheet.name()))));
    }

    private static List<Input> inputs(ExposureCards.Total total, String file) {
        return total.parts().stream().map(part -> part.input(file)).toList();
    }

    private static Reading<Quantity> typed(List<Typed<TypedExposure>> lines) {
        BigDecimal seconds = BigDecimal.ZERO;
        List<Input> inputs = new ArrayList<>();
        for (Typed<TypedExposure> line : lines) {
            TypedExposure e = line.value();
            seconds = seconds.add(e.seconds().multiply(BigDecimal.valueOf(e.count())));
            inputs.add(new Input(
                    e.filter().isEmpty() ? NO_FILTER : e.filter(),
                    e.count() + " × " + e.seconds().toPlainString() + " s",
                    line.origin()));
        }
        return new Reading<>(
                Quantity.of(seconds.doubleValue(), Unit.SECOND),
                new Origin.Derived("sum of what the note says", METHOD, inputs));
    }
}
