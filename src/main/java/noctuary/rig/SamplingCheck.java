package noctuary.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/** How finely the pixels sample a star, and what the optics could show at best. */
final class SamplingCheck {
    /** Fewest pixels across a star's width from which that width is measured without much aliasing. */
    private static final double PIXELS_PER_FWHM = 2;

    private SamplingCheck() {}

    static Optional<Check> of(
            OptionalDouble scale, OptionalDouble airyFwhm, OptionalDouble pixelUm, OptionalDouble ratio) {
        if (scale.isEmpty()) {
            return Optional.empty();
        }
        boolean tooFine = pixelUm.isPresent()
                && ratio.isPresent()
                && pixelUm.getAsDouble() < Optics.nyquistPitchUm(Optics.GREEN_NM, ratio.getAsDouble());
        String text = Words.say(
                        "One pixel covers %s arcsec: stars of %s arcsec or wider (FWHM) span two pixels, the least to "
                                + "measure ",
                        Words.number(scale.getAsDouble(), 2), Words.number(PIXELS_PER_FWHM * scale.getAsDouble(), 2))
                + "a width from; narrower ones show the pixels rather than the sky."
                + diffraction(airyFwhm)
                + (tooFine ? fine(ratio.getAsDouble()) : "");
        return Optional.of(new Check("sampling", tooFine ? Check.Level.WARN : Check.Level.OK, text));
    }

    private static String diffraction(OptionalDouble airyFwhm) {
        return airyFwhm.isPresent()
                ? Words.say(
                        " Without any air the optics could reach %s arcsec.", Words.number(airyFwhm.getAsDouble(), 2))
                : "";
    }

    private static String fine(double ratio) {
        return Words.say(
                " The pixels are finer than even perfect optics can fill: at f/%s pixels of %s µm would lose nothing.",
                Words.number(ratio, 1), Words.number(Optics.nyquistPitchUm(Optics.GREEN_NM, ratio), 2));
    }
}
