package noctuary.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.measure.Elongation;
import noctuary.rig.Optics;

/**
 * What an entry's sheet says of its star width.
 *
 * @param fwhmArcsec of the stars' own profile
 * @param trail what the ellipticities of the stars have in common
 * @param driftJudged whether a night had frames enough to tell a drift from chance
 * @param bestAirmass that the target reaches at the site
 * @param spacingErrorMm what the parts of the train sum up to, less what is wanted
 */
record Sharpness(
        double fwhmArcsec,
        int stars,
        OptionalDouble arcsecPerPx,
        OptionalDouble airyArcsec,
        OptionalDouble guidingRmsArcsec,
        Optional<Elongation> trail,
        boolean driftJudged,
        Optional<Drift> drift,
        Optional<Corners> corners,
        OptionalDouble airmass,
        OptionalDouble bestAirmass,
        OptionalDouble spacingErrorMm) {
    /** Width of a star that guiding alone spreads, over the RMS of both axes together: 2.3548 / sqrt(2). */
    static final double GUIDING_FWHM = Optics.FWHM_PER_SIGMA / Math.sqrt(2);

    OptionalDouble pixelArcsec() {
        return arcsecPerPx.isPresent()
                ? OptionalDouble.of(Optics.pixelFwhmArcsec(arcsecPerPx.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** As the pixels show the stars: their own profile and the pixel, in squares. */
    double shownArcsec() {
        return Math.hypot(fwhmArcsec, pixelArcsec().orElse(0));
    }

    OptionalDouble guidingArcsec() {
        return guidingRmsArcsec.isPresent()
                ? OptionalDouble.of(GUIDING_FWHM * guidingRmsArcsec.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * What drew all stars out one way: with axes a and b of which both but that agree, ab - b² = ab e. Its own noise is
     * taken off.
     */
    OptionalDouble trailArcsec() {
        return trail.isPresent()
                ? OptionalDouble.of(fwhmArcsec * Math.sqrt(steady(trail.get())))
                : OptionalDouble.empty();
    }

    private static double steady(Elongation e) {
        return Math.sqrt(Math.max(0, e.ellipticity() * e.ellipticity() - 2 * e.standardError() * e.standardError()));
    }

    /** Guiding as typed or as the stars show it, whichever is more. */
    OptionalDouble tracking() {
        OptionalDouble typed = guidingArcsec();
        OptionalDouble seen = trailArcsec();
        if (typed.isEmpty() || seen.isEmpty()) {
            return typed.isPresent() ? typed : seen;
        }
        return OptionalDouble.of(Math.max(typed.getAsDouble(), seen.getAsDouble()));
    }
}
