package noctuary.advice;

import static noctuary.advice.Words.arcsec;
import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.percent;
import static noctuary.advice.Words.say;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What could make the stars of an entry narrower, whether it is much or not. */
final class SharpnessLimits {
    private final Sharpness s;
    private final double shown;

    private SharpnessLimits(Sharpness s) {
        this.s = s;
        this.shown = s.shownArcsec();
    }

    /** @param seeing at the zenith, of other nights with the same rig */
    static List<Limit> of(Sharpness sharpness, Usual seeing) {
        SharpnessLimits limits = new SharpnessLimits(sharpness);
        return Stream.of(limits.guiding(), limits.sampling(), limits.drift(), limits.altitude(), limits.seeing(seeing))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Limit> guiding() {
        OptionalDouble tracking = s.tracking();
        if (tracking.isEmpty()) {
            return Optional.empty();
        }
        double loss = Limit.lossWithout(shown, tracking.getAsDouble());
        boolean more = s.guidingArcsec().isPresent()
                && s.trailArcsec().orElse(0) > 1.3 * s.guidingArcsec().getAsDouble();
        String text =
                say("Tracking and guiding widen the stars: without that they would be %s narrower.", percent(loss))
                        + (more
                                ? " The stars are drawn out more than the guiding RMS explains: something bends or slips."
                                : "");
        String settle = "Take a few exposures of 10 s between the long ones: what guiding does shrinks with them, "
                + "what the air does stays.";
        return Optional.of(limit("guiding", loss, text, settle, trackingEvidence(tracking.getAsDouble())));
    }

    private String trackingEvidence(double tracking) {
        String typed = s.guidingRmsArcsec().isPresent()
                ? say("guiding RMS %s in the note", arcsec(s.guidingRmsArcsec().getAsDouble()))
                : "no guiding line in the note";
        String seen = s.trail()
                .map(e -> say(
                        "all stars drawn out by %s ± %s along %s° from +x towards +y",
                        fixed(e.ellipticity(), 3), fixed(e.standardError(), 3), Math.round(e.angleDeg())))
                .orElse("too few stars to tell a common direction");
        return say("%s of %s in squares; %s; %s", arcsec(tracking), arcsec(shown), typed, seen);
    }

    private Optional<Limit> sampling() {
        if (s.pixelArcsec().isEmpty()) {
            return Optional.empty();
        }
        double loss = Limit.lossWithout(shown, s.pixelArcsec().getAsDouble());
        double across = s.fwhmArcsec() / s.arcsecPerPx().getAsDouble();
        String text = say(
                "The pixels are coarse for these stars: they widen them by as much as %s.",
                percent(1 / (1 - loss) - 1));
        String settle = "Shift the pointing a little between exposures and combine on a finer grid, or compare with a "
                + "smaller pixel or a longer focal length on the same target.";
        return Optional.of(limit(
                "sampling",
                loss,
                text,
                settle,
                say(
                        "%s px across the width of %s, a pixel of %s",
                        fixed(across, 1),
                        arcsec(s.fwhmArcsec()),
                        arcsec(s.arcsecPerPx().getAsDouble()))));
    }

    private Optional<Limit> drift() {
        return s.drift().map(d -> {
            double loss = 1 - 1 / d.endOverStart();
            String text = say(
                    "The stars grew by %s from the first to the last frame: the focus moved, or the air worsened.",
                    percent(d.endOverStart() - 1));
            String settle =
                    "Refocus in the middle of the next night: stars that shrink at once were out of focus, stars that "
                            + "stay wide were not.";
            return limit("focus", loss, text, settle, d.evidence());
        });
    }

    private Optional<Limit> altitude() {
        OptionalDouble rest =
                SharpnessBudget.of(s).term(SharpnessBudget.REST).orElseThrow().amount();
        if (rest.isEmpty() || s.airmass().isEmpty() || s.bestAirmass().isEmpty()) {
            return Optional.empty();
        }
        double ratio = s.bestAirmass().getAsDouble() / s.airmass().getAsDouble();
        double saved = rest.getAsDouble() * Math.sqrt(Math.max(0, 1 - Math.pow(ratio, 2 * Drift.SEEING_POWER)));
        String text = say(
                "The target stood low: near its highest the same air would have given stars %s narrower.",
                percent(Limit.lossWithout(shown, saved)));
        return Optional.of(limit(
                "altitude",
                Limit.lossWithout(shown, saved),
                text,
                "Take the same target within an hour of its highest point.",
                say(
                        "airmass %s, at its highest %s; seeing grows with its power 0.6",
                        fixed(s.airmass().getAsDouble(), 2),
                        fixed(s.bestAirmass().getAsDouble(), 2))));
    }

    private Optional<Limit> seeing(Usual usual) {
        OptionalDouble zenith = SharpnessBudget.seeingAtZenith(s);
        if (zenith.isEmpty() || !usual.unusuallyHigh(zenith.getAsDouble())) {
            return Optional.empty();
        }
        double air = Math.pow(s.airmass().getAsDouble(), Drift.SEEING_POWER);
        double saved = air * Math.sqrt(Math.max(0, square(zenith.getAsDouble()) - square(usual.median())));
        double loss = Limit.lossWithout(shown, saved);
        String text = say(
                "The air was worse than usual: in your usual seeing the stars would have been %s narrower.",
                percent(loss));
        String settle = "Nothing in the rig mends it; look at the next night with this rig before changing anything.";
        return Optional.of(limit(
                "seeing",
                loss,
                text,
                settle,
                say(
                        "what the other terms leave is %s at the zenith, against a median of %s on %s other nights with "
                                + "this rig",
                        arcsec(zenith.getAsDouble()), arcsec(usual.median()), usual.nights())));
    }

    private static double square(double value) {
        return value * value;
    }

    static Limit limit(String cause, double loss, String text, String settle, String evidence) {
        return new Limit(loss, new Finding("limit-" + cause, text, settle, evidence));
    }
}
