package noctuary.demo;

import java.time.Instant;
import java.util.List;

/**
 * The state of sky and rig during one exposure.
 *
 * @param fwhmArcsec of a star in the middle of the field without the guiding error
 * @param guidingArcsec RMS along right ascension beyond that along declination, which is part of the round image
 * @param clear share of the light that came through cloud
 */
record Moment(
        Instant start,
        double altitudeDeg,
        double airmass,
        double fwhmArcsec,
        double guidingArcsec,
        double temperatureC,
        double defocusUm,
        double clear,
        double shadow) {
    private static final double FWHM_PER_RMS = 2.3548;
    /** Share of a star's blur disc that its FWHM feels when the disc adds in quadrature. */
    private static final double BLUR = 0.62;

    static Moment of(PlannedEntry entry, int frame) {
        DemoRig rig = DemoRig.of(entry.rig());
        Instant start = entry.startOf(frame);
        Instant middle = start.plusMillis(Math.round(500 * entry.seconds()));
        double altitude = Altitude.of(DemoSky.towards(entry.target()), DemoSite.of(entry.site()), middle);
        double airmass = Altitude.airmass(altitude);
        double hours = entry.everyMinutes() * frame / 60;
        double defocus = entry.focus()[0] + entry.focus()[1] * hours;
        double blur = BLUR * Math.abs(defocus) / rig.focalRatio() * 206.264806 / rig.focalLengthMm();
        double seeing = entry.seeing() * StrictMath.pow(airmass, 0.6) * flicker(entry.slug(), frame);
        double guiding = entry.guiding() / Math.sqrt(2);
        double round = FWHM_PER_RMS * 0.8 * guiding;
        double own = rig.ownFwhmArcsec();
        return new Moment(
                start,
                altitude,
                airmass,
                Math.sqrt(seeing * seeing + blur * blur + round * round + own * own),
                1.17 * guiding,
                entry.temperature()[0] + entry.temperature()[1] * hours,
                defocus,
                nth(entry.clear(), frame, 1),
                nth(entry.shadow(), frame, 0));
    }

    /** Seeing changes a little from frame to frame. */
    private static double flicker(String slug, int frame) {
        return 1 + 0.05 * new Turbulence(slug.hashCode()).at(0.37 + 0.73 * frame, 0.5);
    }

    private static double nth(List<Double> values, int frame, double otherwise) {
        return values.isEmpty() ? otherwise : values.get(frame % values.size());
    }

    /** FWHM that the guiding error adds in quadrature along right ascension. */
    double guidingFwhmArcsec() {
        return FWHM_PER_RMS * guidingArcsec;
    }
}
