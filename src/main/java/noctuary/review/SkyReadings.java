package noctuary.review;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Quantity;
import noctuary.fits.Cited;
import noctuary.fits.FrameHeader;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.measure.RigSheet;

/**
 * Background and noise of a night. The level of a frame holds a pedestal that no card tells reliably, so the rate is
 * taken from the noise: the variance in electrons less that of the readout is the light (and dark current) that fell.
 */
final class SkyReadings {
    private static final double HOUR = 3600;

    private SkyReadings() {}

    /** Electrons a second and square arcsec. */
    static Reading backgroundRate(EntryNight night) {
        return Readings.ofSingles(
                night,
                "gain, read noise, exposure or image scale is not known",
                (f, s) -> Camera.of(f, night).map(Camera::rate).orElse(OptionalDouble.empty()));
    }

    /**
     * Standard deviation over one square arcsec of an hour of such frames, electrons a second and square metre of
     * aperture, so that rigs which gather unlike amounts of light compare.
     */
    static Reading noiseInAnHour(EntryNight night) {
        return Readings.ofSingles(
                night,
                "gain, read noise, exposure, image scale or aperture is not known",
                (f, s) -> Camera.of(f, night).map(Camera::noiseInAnHour).orElse(OptionalDouble.empty()));
    }

    static Reading noiseAdu(EntryNight night) {
        return Readings.ofSingles(
                night,
                "no pixels to measure",
                (f, s) -> f.report()
                        .background()
                        .map(b -> OptionalDouble.of(b.noise()))
                        .orElse(OptionalDouble.empty()));
    }

    /** What must be the same for noises in ADU to compare. */
    static String recipe(EntryNight night) {
        return night.filter() + "|"
                + night.files().stream()
                        .map(FrameSheet::report)
                        .map(r -> String.format(
                                Locale.ROOT,
                                "%.1f s, %.3f",
                                r.exposureSeconds().orElse(Double.NaN),
                                r.gain().orElse(Double.NaN)))
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining("; "));
    }

    /** One single exposure with all that turns its noise into a rate. */
    private record Camera(
            double noiseE, double readNoiseE, double seconds, double arcsecPerPx, OptionalDouble apertureMm) {
        static Optional<Camera> of(FrameSheet file, EntryNight night) {
            FrameReport report = file.report();
            OptionalDouble gain = report.gain().isPresent() ? report.gain() : typed(night, RigNote::camera, "gain");
            OptionalDouble read = told(file, FrameHeader::readNoiseElectrons);
            OptionalDouble readNoise = read.isPresent() ? read : typed(night, RigNote::camera, "read noise");
            Optional<FrameReport.Scale> scale = report.imageScale();
            if (gain.isEmpty()
                    || readNoise.isEmpty()
                    || scale.isEmpty()
                    || report.background().isEmpty()
                    || !(report.exposureSeconds().orElse(0) > 0)) {
                return Optional.empty();
            }
            return Optional.of(new Camera(
                    gain.getAsDouble() * report.background().get().noise(),
                    readNoise.getAsDouble(),
                    report.exposureSeconds().getAsDouble(),
                    scale.get().arcsecPerPx(),
                    told(file, FrameHeader::apertureMm).isPresent()
                            ? told(file, FrameHeader::apertureMm)
                            : typed(night, RigNote::optics, "aperture")));
        }

        OptionalDouble rate() {
            double light = noiseE * noiseE - readNoiseE * readNoiseE;
            return light > 0
                    ? OptionalDouble.of(light / seconds / (arcsecPerPx * arcsecPerPx))
                    : OptionalDouble.empty();
        }

        OptionalDouble noiseInAnHour() {
            double noise = noiseE / Math.sqrt(seconds * HOUR) / arcsecPerPx;
            return apertureMm.isPresent()
                    ? OptionalDouble.of(noise / (Math.PI / 4 * Math.pow(apertureMm.getAsDouble() / 1000, 2)))
                    : OptionalDouble.empty();
        }

        private static OptionalDouble told(FrameSheet file, Function<FrameHeader, Optional<Cited<Double>>> card) {
            return file.header()
                    .flatMap(card)
                    .map(c -> OptionalDouble.of(c.value()))
                    .orElse(OptionalDouble.empty());
        }

        private static OptionalDouble typed(
                EntryNight night, Function<RigNote, Map<String, Typed<Quantity>>> part, String key) {
            return night.rigSheet()
                    .map(RigSheet::note)
                    .map(part)
                    .map(values -> values.get(key))
                    .map(t -> OptionalDouble.of(t.value().value()))
                    .orElse(OptionalDouble.empty());
        }
    }
}
