package noctuary.measure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.stars.StarField;
import noctuary.stars.Summary;
import noctuary.stats.Robust;

/** Star shapes, background and noise of an entry: the median over its counted frames, else the stack's. */
final class StarFigures {
    private final List<FrameSheet> sources;
    private final Medians medians;

    /** @param sources as {@link #sources} gives them */
    StarFigures(List<FrameSheet> sources) {
        this.sources = sources;
        this.medians = new Medians(sources);
    }

    /** The counted frames; the stack where there are none. */
    static List<FrameSheet> sources(List<FrameSheet> frames, Optional<FrameSheet> stack) {
        List<FrameSheet> counted = frames.stream().filter(FrameSheet::counted).toList();
        return counted.isEmpty() ? stack.stream().toList() : counted;
    }

    Map<Figure, Fact<Quantity>> figures(Fact<Quantity> imageScale) {
        Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);
        Fact<Quantity> fwhmPx = shape(Figure.FWHM_PX, "fwhm", StarField::fwhmPx);
        figures.put(Figure.FWHM_PX, fwhmPx);
        figures.put(Figure.FWHM_ARCSEC, arcsec(fwhmPx, imageScale));
        figures.put(Figure.SAMPLING, sampling(fwhmPx));
        figures.put(Figure.ELLIPTICITY, shape(Figure.ELLIPTICITY, "ellipticity", StarField::ellipticity));
        figures.put(
                Figure.HALF_FLUX_RADIUS,
                shape(Figure.HALF_FLUX_RADIUS, "half-flux-radius", StarField::halfFluxRadiusPx));
        figures.put(Figure.STARS, medians.of(Figure.STARS, "stars", stars(f -> (double) f.measured())));
        figures.put(
                Figure.BACKGROUND_LEVEL,
                medians.of(
                        Figure.BACKGROUND_LEVEL,
                        "background",
                        stars(f -> f.background().level())));
        figures.put(
                Figure.BACKGROUND_NOISE,
                medians.of(
                        Figure.BACKGROUND_NOISE,
                        "background",
                        stars(f -> f.background().noise())));
        return figures;
    }

    private static Function<Measurement, Optional<Double>> stars(Function<StarField, Double> part) {
        return measurement -> measurement.field().map(part);
    }

    private Fact<Quantity> shape(Figure figure, String method, Function<StarField, Optional<Summary>> part) {
        List<Input> inputs = new ArrayList<>();
        List<Summary> summaries = new ArrayList<>();
        for (FrameSheet source : sources) {
            source.measurement().field().flatMap(part).ifPresent(s -> {
                summaries.add(s);
                inputs.add(Medians.input(source, s.median(), figure.unit(), method));
            });
        }
        if (summaries.isEmpty()) {
            return Fact.missing(whyNoShape());
        }
        double[] medians = summaries.stream().mapToDouble(Summary::median).toArray();
        double error = medians.length < 3 ? summaries.get(0).standardError() : Robust.medianError(medians);
        Quantity value = Double.isFinite(error)
                ? Quantity.of(Robust.median(medians), figure.unit(), error)
                : Quantity.of(Robust.median(medians), figure.unit());
        return Fact.of(value, Medians.origin(inputs, method));
    }

    private String whyNoShape() {
        if (sources.isEmpty()) {
            return "there is no frame or stack to measure";
        }
        return sources.get(0).measurement().field().flatMap(StarField::whyNot).orElse("no pixels to measure");
    }

    private static Fact<Quantity> sampling(Fact<Quantity> fwhmPx) {
        return fwhmPx instanceof Fact.Known<Quantity> width
                ? Readings.known(Readings.derived(
                        width.reading().value().value(),
                        Unit.PIXEL,
                        "pixels across the FWHM",
                        "sampling",
                        Readings.input("FWHM", width.reading())))
                : fwhmPx;
    }

    private static Fact<Quantity> arcsec(Fact<Quantity> px, Fact<Quantity> scale) {
        if (!(px instanceof Fact.Known<Quantity> width)) {
            return px;
        }
        if (!(scale instanceof Fact.Known<Quantity> s)) {
            return Fact.missing("the image scale is not known");
        }
        double perPx = s.reading().value().value();
        Quantity value = width.reading().value();
        Quantity arcsec = value.standardError().isPresent()
                ? Quantity.of(
                        value.value() * perPx,
                        Unit.ARCSECOND,
                        value.standardError().getAsDouble() * perPx)
                : Quantity.of(value.value() * perPx, Unit.ARCSECOND);
        List<Input> inputs =
                List.of(Readings.input("FWHM", width.reading()), Readings.input("image scale", s.reading()));
        return Fact.of(arcsec, new Derived("FWHM in pixels × image scale", "fwhm", inputs));
    }
}
