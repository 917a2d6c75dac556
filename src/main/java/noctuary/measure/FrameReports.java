package noctuary.measure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.FrameReport.Blemishes;
import noctuary.measure.FrameReport.Field;
import noctuary.measure.FrameReport.Middle;
import noctuary.measure.FrameReport.Noise;
import noctuary.measure.FrameReport.Scale;
import noctuary.measure.FrameReport.Sky;
import noctuary.measure.FrameReport.Spread;
import noctuary.measure.FrameReport.Stars;
import noctuary.noise.Defects;
import noctuary.noise.NoiseReport;
import noctuary.stars.Background;
import noctuary.stars.StarField;
import noctuary.stars.Summary;

/** Turns measurements into the report that is printed, with what the rig knows of the scale. */
public final class FrameReports {
    private static final Spread NOTHING =
            new Spread(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    private FrameReports() {}

    /** @param rigScale arcsec per unbinned pixel, for files whose header does not tell */
    public static FrameReport of(String file, Measurement m, OptionalDouble rigScale) {
        Optional<FrameHeader> header = m.header();
        Optional<Scale> scale = m.readable() ? scale(header, rigScale) : Optional.empty();
        return new FrameReport(
                file,
                m.kind(),
                m.readable() ? OptionalInt.of(m.width()) : OptionalInt.empty(),
                m.readable() ? OptionalInt.of(m.height()) : OptionalInt.empty(),
                m.readable() ? OptionalInt.of(m.planes().size()) : OptionalInt.empty(),
                header.flatMap(FrameHeader::mosaic).map(c -> c.value().name()),
                header.flatMap(FrameHeader::object).map(Cited::value),
                header.flatMap(FrameHeader::taken).map(Cited::value),
                header.map(FrameReports::exposure).orElseGet(OptionalDouble::empty),
                header.map(FrameReports::exposures).orElseGet(OptionalInt::empty),
                header.flatMap(FrameHeader::filter).map(Cited::value),
                number(header.flatMap(FrameHeader::electronsPerAdu)),
                number(header.flatMap(FrameHeader::sensorTemperatureC)),
                scale,
                scale.map(s -> field(m, s.arcsecPerPx())),
                m.field().map(StarField::background).flatMap(FrameReports::sky),
                m.field().map(f -> stars(f, scale)),
                m.field().map(StarField::zones).orElse(List.of()),
                m.noise().map(n -> noise(n, m)),
                m.defects().map(FrameReports::blemishes),
                m.troubles());
    }

    private static Optional<Scale> scale(Optional<FrameHeader> header, OptionalDouble rigScale) {
        Optional<Double> sky =
                header.flatMap(FrameHeader::sky).map(c -> c.value().arcsecPerPx());
        if (sky.isPresent()) {
            return Optional.of(new Scale(sky.get(), "wcs"));
        }
        Optional<Double> optics = header.flatMap(HeaderOptics::arcsecPerPx);
        if (optics.isPresent()) {
            return Optional.of(new Scale(optics.get(), "header optics"));
        }
        if (rigScale.isEmpty() || header.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Scale(rigScale.getAsDouble() * header.get().binning(), "rig"));
    }

    private static Field field(Measurement m, double arcsecPerPx) {
        return new Field(TangentField.degrees(m.width(), arcsecPerPx), TangentField.degrees(m.height(), arcsecPerPx));
    }

    private static OptionalDouble exposure(FrameHeader header) {
        return ExposureCards.totalSeconds(header)
                .map(e -> OptionalDouble.of(e.seconds()))
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalInt exposures(FrameHeader header) {
        if (header.exposures().isPresent()) {
            return OptionalInt.of(header.exposures().get().value());
        }
        return header.exposureSeconds().isPresent() ? OptionalInt.of(1) : OptionalInt.empty();
    }

    private static Optional<Sky> sky(Background background) {
        if (!Double.isFinite(background.level()) || !Double.isFinite(background.noise())) {
            return Optional.empty();
        }
        return Optional.of(new Sky(background.level(), background.noise(), finite(background.gradientPercent())));
    }

    private static Noise noise(NoiseReport noise, Measurement m) {
        OptionalDouble gain = number(m.header().flatMap(FrameHeader::electronsPerAdu));
        boolean known = m.kind() == FrameReport.Kind.SINGLE && gain.isPresent();
        return new Noise(
                noise.sigma(),
                noise.sigmaImmerkaer(),
                noise.correlation(),
                known ? OptionalDouble.of(noise.sigma() * gain.getAsDouble()) : OptionalDouble.empty(),
                noise.scales(),
                noise.zones());
    }

    private static Stars stars(StarField field, Optional<Scale> scale) {
        Spread arcsec = field.fwhmPx()
                .flatMap(s -> scale.map(k -> spread(s, k.arcsecPerPx())))
                .orElse(NOTHING);
        return new Stars(
                field.stars().size(),
                (int) field.measured(),
                field.saturated(),
                field.fwhmPx().map(s -> spread(s, 1)).orElse(NOTHING),
                arcsec,
                field.ellipticity().map(s -> spread(s, 1)).orElse(NOTHING),
                field.halfFluxRadiusPx().map(s -> spread(s, 1)).orElse(NOTHING),
                new Middle(field.moffatBeta()));
    }

    private static Spread spread(Summary s, double factor) {
        return new Spread(
                OptionalDouble.of(s.median() * factor),
                OptionalDouble.of(s.low() * factor),
                OptionalDouble.of(s.high() * factor));
    }

    private static Blemishes blemishes(Defects d) {
        return new Blemishes(
                d.hotPixels(),
                d.rowBanding(),
                d.columnBanding(),
                d.driftStreak(),
                d.clippedBlackPercent(),
                d.clippedWhitePercent());
    }

    private static OptionalDouble number(Optional<Cited<Double>> cited) {
        return cited.map(c -> finite(c.value())).orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
