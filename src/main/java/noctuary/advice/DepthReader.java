package noctuary.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.fits.FrameKind;
import noctuary.measure.Figure;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.stats.Robust;

/** Takes from an entry's sheet what bears on its depth. */
final class DepthReader {
    private final EntryContext context;
    private final List<FrameSheet> singles;

    private DepthReader(EntryContext context) {
        this.context = context;
        this.singles = context.lights().stream()
                .filter(f -> f.report().kind() == FrameReport.Kind.SINGLE)
                .toList();
    }

    static Depth read(EntryContext context) {
        return new DepthReader(context).depth();
    }

    private Depth depth() {
        OptionalDouble gain = context.number(Figure.GAIN);
        PixelNoise noise = PixelNoise.of(context, singles);
        OptionalDouble readNoise = readNoise();
        Optional<FrameReport> stack = context.sheet().stack().map(FrameSheet::report);
        return new Depth(
                product(noise.counts(), gain),
                product(noise.error(), gain),
                noise.starFree(),
                whyNoNoise(gain),
                median(f -> f.exposureSeconds().isPresent()
                        ? Optional.of(f.exposureSeconds().getAsDouble())
                        : Optional.empty()),
                context.number(Figure.EXPOSURE),
                readNoise,
                product(level(), gain),
                dark(gain, readNoise),
                product(median(f -> f.defects().flatMap(DepthReader::banding)), gain),
                context.number(Figure.IMAGE_SCALE),
                stack.flatMap(FrameReport::defects)
                        .map(FrameReport.Blemishes::driftStreak)
                        .orElseGet(OptionalDouble::empty),
                stackBanding(stack),
                clipped(FrameReport.Blemishes::clippedBlackPercent),
                clipped(FrameReport.Blemishes::clippedWhitePercent));
    }

    private String whyNoNoise(OptionalDouble gain) {
        if (singles.isEmpty()) {
            return "the noise of one exposure is not known: the entry has no single frames";
        }
        return gain.isEmpty() ? "the gain is not known, so counts cannot be turned into electrons" : "";
    }

    private OptionalDouble readNoise() {
        Optional<Double> header = singles.stream()
                .flatMap(f -> f.header().flatMap(FrameHeader::readNoiseElectrons).stream())
                .map(Cited::value)
                .filter(v -> v > 0)
                .findFirst();
        OptionalDouble rig = context.camera("read noise");
        return rig.isPresent() ? rig : header.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** Counts of the lights above dark frames of the same exposure. */
    private OptionalDouble level() {
        OptionalDouble light = median(f -> f.background().map(FrameReport.Sky::level));
        double[] dark = darks().mapToDouble(FrameReport.Sky::level).toArray();
        return light.isEmpty() || dark.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(light.getAsDouble() - Robust.median(dark));
    }

    private Stream<FrameReport.Sky> darks() {
        OptionalDouble sub = median(f -> f.exposureSeconds().isPresent()
                ? Optional.of(f.exposureSeconds().getAsDouble())
                : Optional.empty());
        return context.sheet().frames().stream()
                .filter(f -> f.kind() == FrameKind.DARK)
                .map(FrameSheet::report)
                .filter(r -> r.exposureSeconds().equals(sub))
                .flatMap(r -> r.background().stream());
    }

    /** From dark frames of the lights' exposure: a variance of counts is their number. */
    private OptionalDouble dark(OptionalDouble gain, OptionalDouble readNoise) {
        double[] noise = darks().mapToDouble(FrameReport.Sky::noise).toArray();
        if (noise.length == 0 || gain.isEmpty() || readNoise.isEmpty()) {
            return OptionalDouble.empty();
        }
        double electrons = Robust.median(noise) * gain.getAsDouble();
        return OptionalDouble.of(
                Math.max(0, electrons * electrons - readNoise.getAsDouble() * readNoise.getAsDouble()));
    }

    private static Optional<Double> banding(FrameReport.Blemishes defects) {
        return defects.rowBanding().isPresent() && defects.columnBanding().isPresent()
                ? Optional.of(Math.hypot(
                        defects.rowBanding().getAsDouble(),
                        defects.columnBanding().getAsDouble()))
                : Optional.empty();
    }

    private static OptionalDouble stackBanding(Optional<FrameReport> stack) {
        Optional<Double> banding = stack.flatMap(FrameReport::defects).flatMap(DepthReader::banding);
        Optional<Double> noise = stack.flatMap(FrameReport::background).map(FrameReport.Sky::noise);
        return banding.isPresent() && noise.filter(n -> n > 0).isPresent()
                ? OptionalDouble.of(banding.get() / noise.get())
                : OptionalDouble.empty();
    }

    /** Of the single frames, else of the stack: a stack may have been cut when it was written. */
    private double clipped(Function<FrameReport.Blemishes, OptionalDouble> end) {
        OptionalDouble frames = median(
                f -> f.defects().map(end).filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble));
        OptionalDouble stack = context.sheet()
                .stack()
                .flatMap(s -> s.report().defects())
                .map(end)
                .orElseGet(OptionalDouble::empty);
        return Math.max(frames.orElse(0), stack.orElse(0));
    }

    private OptionalDouble median(Function<FrameReport, Optional<Double>> part) {
        double[] values = singles.stream()
                .map(FrameSheet::report)
                .flatMap(r -> part.apply(r).stream())
                .mapToDouble(v -> v)
                .toArray();
        return values.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Robust.median(values));
    }

    private static OptionalDouble product(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() * b.getAsDouble())
                : OptionalDouble.empty();
    }
}
