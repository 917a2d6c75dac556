package noctuary.advice;

import static noctuary.advice.Words.arcsec;
import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.Optional;
import noctuary.rig.RigFigures;

/** A rig's pixels against the star widths that this keeper really measures. */
final class SamplingAdvice {
    /** Aliasing is negligible from here on: contrast 0.028 at the pixels' limit, Gaussian star. */
    private static final double ENOUGH = 2;
    /** Finer pixels show no more: contrast 0.0003. */
    private static final double MORE_THAN_ENOUGH = 3.5;

    private SamplingAdvice() {}

    static Optional<Finding> of(RigDesk.Spread px, RigDesk.Spread seeing, RigFigures figures) {
        String evidence = say(
                "%s nights of all rigs: %s in the middle, two thirds between %s and %s; one pixel here is %s",
                seeing.nights(),
                arcsec(seeing.median()),
                arcsec(seeing.low()),
                arcsec(seeing.high()),
                arcsec(figures.imageScaleArcsecPerPx().getAsDouble()));
        return Optional.of(new Finding("desk-sampling", text(px), settle(px), evidence));
    }

    private static String text(RigDesk.Spread px) {
        String across = say("In your own seeing a star is %s pixels wide in the middle, ", fixed(px.median(), 1));
        if (px.median() < ENOUGH) {
            return across + "too few to show what the air allows: pixels, not air, set how sharp pictures look.";
        }
        return px.low() > MORE_THAN_ENOUGH
                ? across + "more than enough even on your best nights: binning by two would lose hardly anything."
                : across + "enough to show what the air allows.";
    }

    private static String settle(RigDesk.Spread px) {
        return px.median() < ENOUGH
                ? "Shifting the pointing between exposures and combining on a finer grid tells how much a smaller pixel "
                        + "would give."
                : "";
    }
}
