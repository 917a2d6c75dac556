package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every measure that a review compares, in the order in which a reader meets them. */
final class Gauges {
    static final Measure FWHM_ARCSEC = star("fwhmArcsec", "Star FWHM", "arcsec")
            .following(Influence.AIRMASS)
            .throughTheSky();
    static final Measure FWHM_ZENITH =
            star("fwhmAirmassOneArcsec", "FWHM at airmass 1", "arcsec").throughTheSky();
    static final Measure FWHM_PX =
            star("fwhmPx", "FWHM in pixels", "px").following(Influence.AIRMASS).throughTheSky();
    static final Measure ELLIPTICITY = new Measure("ellipticity", "Ellipticity", "", true);
    static final Measure CORNER_EXCESS = new Measure("cornerExcessArcsec", "Corner excess", "arcsec", true);
    static final Measure TILT = new Measure("tiltArcsec", "Tilt", "arcsec", true);
    static final Measure CURVATURE = new Measure("curvatureArcsec", "Curvature", "arcsec", true);
    static final Measure BACKGROUND_RATE = sky("backgroundRate", "Background rate", "e/s/arcsec²");
    static final Measure BACKGROUND_MAGNITUDE =
            new Measure("backgroundMagnitude", "Background brightness", "mag/arcsec²", false);
    static final Measure BACKGROUND_NOISE = sky("backgroundNoise", "Background noise", "ADU");
    static final Measure NOISE_IN_AN_HOUR = sky("noiseInAnHour", "Noise in an hour", "e/s/arcsec²/m²");
    /** Of the later image over the earlier of the same target, which stands at zero. */
    static final Measure DEPTH = new Measure("depthMag", "Depth at equal exposure", "mag", false)
            .following(Influence.MOON, Influence.AIRMASS, Influence.TARGET, Influence.FILTER)
            .throughTheSky();

    static final Measure HOT_PIXELS = new Measure("hotPixels", "Hot pixels", "per million", true);
    static final Measure ROW_BANDING = new Measure("rowBanding", "Row banding", "e", true);
    static final Measure COLUMN_BANDING = new Measure("columnBanding", "Column banding", "e", true);
    static final Measure STREAKS = new Measure("driftStreak", "Drift streaks", "", true);
    static final Measure GUIDING = new Measure("guidingRmsArcsec", "Guiding RMS", "arcsec", true).byShare();
    static final Measure USED_OF_DARK = new Measure("usedOfDarkPercent", "Dark hours used", "%", false);
    static final Measure USED_OF_CLEAR = new Measure("usedOfClearPercent", "Used of clear hours", "%", false);
    static final Measure LOST = new Measure("lostMinutes", "Minutes lost", "min", true);

    private static final String UNLIKE_PIXELS = "the pixels of the two rigs cover unlike angles";
    private static final String SAID_IN_ARCSEC = "the width in arcsec says it, whatever the pixels";
    private static final String UNLIKE_LIGHT =
            "two rigs gather unlike amounts of light, so that electrons say nothing of the sky; see depth";

    private Gauges() {}

    private static Measure star(String id, String label, String unit) {
        return new Measure(id, label, unit, true).byShare();
    }

    /** What the sky gives grows with the Moon and the air, and is another through another filter. */
    private static Measure sky(String id, String label, String unit) {
        return new Measure(id, label, unit, true)
                .byShare()
                .following(Influence.MOON, Influence.AIRMASS, Influence.FILTER)
                .throughTheSky();
    }

    static List<Gauge> all() {
        List<Gauge> all = new ArrayList<>();
        all.addAll(stars());
        all.addAll(sky());
        all.addAll(sensor());
        all.addAll(work());
        return all;
    }

    private static List<Gauge> stars() {
        return List.of(
                Gauge.of(FWHM_ARCSEC, StarReadings::fwhmArcsec),
                Gauge.of(FWHM_ZENITH, StarReadings::fwhmZenith),
                Gauge.of(FWHM_PX, StarReadings::fwhmPx).unless(Gauges::pixels),
                Gauge.of(ELLIPTICITY, StarReadings::ellipticity),
                Gauge.of(CORNER_EXCESS, FieldReadings::cornerExcess),
                Gauge.of(TILT, FieldReadings::tilt),
                Gauge.of(CURVATURE, FieldReadings::curvature));
    }

    private static List<Gauge> sky() {
        return List.of(
                Gauge.of(BACKGROUND_RATE, SkyReadings::backgroundRate)
                        .amongFilters()
                        .ofLightAlone()
                        .unless(c -> betweenRigs(c, UNLIKE_LIGHT)),
                Gauge.of(BACKGROUND_MAGNITUDE, n -> Reading.missing("no zero point is known")),
                Gauge.of(NOISE_IN_AN_HOUR, SkyReadings::noiseInAnHour)
                        .amongFilters()
                        .ofLightAlone(),
                Gauge.of(BACKGROUND_NOISE, SkyReadings::noiseAdu)
                        .amongAlike("filter, gain and exposure", n -> n.traits().recipe())
                        .ofLightAlone());
    }

    private static List<Gauge> sensor() {
        return List.of(
                Gauge.of(HOT_PIXELS, SensorReadings::hotPixels),
                Gauge.of(ROW_BANDING, SensorReadings::rowBanding),
                Gauge.of(COLUMN_BANDING, SensorReadings::columnBanding),
                Gauge.of(STREAKS, SensorReadings::streaks));
    }

    private static List<Gauge> work() {
        return List.of(
                Gauge.of(GUIDING, WorkReadings::guiding),
                Gauge.of(USED_OF_DARK, WorkReadings::usedOfDark),
                Gauge.of(USED_OF_CLEAR, WorkReadings::usedOfClear),
                Gauge.of(LOST, WorkReadings::lost));
    }

    /** Where the width in arcsec is known, that in pixels says the same again, or compares unlike pixels. */
    private static Optional<String> pixels(Change change) {
        boolean arcsec = Stream.of(change.before(), change.after())
                .allMatch(side -> side.nights().stream()
                        .anyMatch(n -> n.reading(FWHM_ARCSEC).value().isPresent()));
        return arcsec ? Optional.of(SAID_IN_ARCSEC) : betweenRigs(change, UNLIKE_PIXELS);
    }

    private static Optional<String> betweenRigs(Change change, String why) {
        return change.kind() == ChangeKind.RIG && change.part().isEmpty() ? Optional.of(why) : Optional.empty();
    }
}
