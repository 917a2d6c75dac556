package noctuary.review;

import java.util.OptionalDouble;
import java.util.function.BiFunction;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;

/** Star shapes of a night: medians over its files. */
final class StarReadings {
    /** Width grows with airmass to this power for turbulence of Kolmogorov's kind (Roddier 1981, Progress in Optics 19, 281). */
    private static final double SEEING_POWER = 0.6;

    private StarReadings() {}

    static Reading fwhmArcsec(EntryNight night) {
        Reading px = fwhmPx(night);
        return px.value().isEmpty() ? px : Readings.median(night, "the image scale is not known", (f, s) -> arcsec(f));
    }

    static Reading fwhmZenith(EntryNight night) {
        Reading arcsec = fwhmArcsec(night);
        return arcsec.value().isEmpty()
                ? arcsec
                : Readings.median(night, "the airmass is not known", (f, s) -> zenith(arcsec(f), s.airmass()));
    }

    static Reading fwhmPx(EntryNight night) {
        return shape(night, (f, s) -> stars(f, FrameReport.Stars::fwhmPx));
    }

    static Reading ellipticity(EntryNight night) {
        return shape(night, (f, s) -> stars(f, FrameReport.Stars::ellipticity));
    }

    private static Reading shape(EntryNight night, BiFunction<FrameSheet, FrameSky, OptionalDouble> value) {
        return Readings.median(night, "no stars could be measured", value);
    }

    private static OptionalDouble arcsec(FrameSheet file) {
        return stars(file, FrameReport.Stars::fwhmArcsec);
    }

    private static OptionalDouble zenith(OptionalDouble arcsec, OptionalDouble airmass) {
        return arcsec.isPresent() && airmass.isPresent()
                ? OptionalDouble.of(arcsec.getAsDouble() / Math.pow(airmass.getAsDouble(), SEEING_POWER))
                : OptionalDouble.empty();
    }

    private static OptionalDouble stars(
            FrameSheet file, java.util.function.Function<FrameReport.Stars, FrameReport.Spread> part) {
        return file.report().stars().map(part).map(FrameReport.Spread::median).orElse(OptionalDouble.empty());
    }
}
