package noctuary.measure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.noise.NoiseReport;
import noctuary.stars.StarField;

/** What the noise of an entry is made of: whether neighbours share it, and how many electrons it is. */
final class NoiseFigures {
    private final List<FrameSheet> sources;
    private final Medians medians;

    /** @param sources as {@link StarFigures#sources} gives them */
    NoiseFigures(List<FrameSheet> sources) {
        this.sources = sources;
        this.medians = new Medians(sources);
    }

    Map<Figure, Fact<Quantity>> figures(Fact<Quantity> noise, Fact<Quantity> gain) {
        Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);
        figures.put(Figure.BACKGROUND_NOISE_ELECTRONS, electrons(noise, gain));
        figures.put(Figure.NOISE_OF_NEIGHBOURS, of(Figure.NOISE_OF_NEIGHBOURS, NoiseReport::sigmaImmerkaer));
        figures.put(Figure.NOISE_CORRELATION, of(Figure.NOISE_CORRELATION, NoiseReport::correlation));
        figures.put(
                Figure.BACKGROUND_GRADIENT,
                medians.of(Figure.BACKGROUND_GRADIENT, "background", NoiseFigures::gradientPercent));
        return figures;
    }

    private Fact<Quantity> of(Figure figure, Function<NoiseReport, OptionalDouble> part) {
        return medians.of(
                figure,
                "noise-neighbours",
                measurement -> measurement
                        .noise()
                        .map(part)
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble));
    }

    private static Optional<Double> gradientPercent(Measurement measurement) {
        return measurement.field().map(StarField::background).map(sky -> sky.gradientPercent());
    }

    /** Of single frames only: a stack's counts were divided and scaled by whoever made it. */
    private Fact<Quantity> electrons(Fact<Quantity> noise, Fact<Quantity> gain) {
        if (sources.stream().anyMatch(f -> f.measurement().kind() != FrameReport.Kind.SINGLE)) {
            return Fact.missing("the counts of a stack have no unit that is known");
        }
        if (!(noise instanceof Fact.Known<Quantity> adu)) {
            return noise;
        }
        if (!(gain instanceof Fact.Known<Quantity> perAdu)) {
            return Fact.missing("the gain is not known");
        }
        return Readings.known(Readings.derived(
                adu.reading().value().value() * perAdu.reading().value().value(),
                Unit.ELECTRON,
                "noise in ADU × gain",
                "background",
                Readings.input("noise", adu.reading()),
                Readings.input("gain", perAdu.reading())));
    }
}
