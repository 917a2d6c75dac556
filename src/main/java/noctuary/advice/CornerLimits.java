package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.percent;
import static noctuary.advice.Words.px;
import static noctuary.advice.Words.say;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Spacing and tilt as the star shapes tell them: growth the same to all corners, or across the field. */
final class CornerLimits {
    private static final String TURN =
            "Turn the camera by 180° in its joint and take five frames: a wide side that turns with it is the camera’s, "
                    + "one that stays belongs to the focuser or the corrector.";

    private CornerLimits() {}

    /** @param spacingErrorMm what the parts sum up to, less what is wanted: negative for a sensor too close */
    static List<Limit> of(Corners c, OptionalDouble spacingErrorMm) {
        List<Limit> limits = new ArrayList<>();
        if (c.misplaced()) {
            limits.add(spacing(c, spacingErrorMm));
        }
        if (mostlyOneWay(c)) {
            limits.add(oneWay(c));
        } else if (c.tilted()) {
            limits.add(tilt(c));
        }
        return limits;
    }

    /** Both terms in a few words, with how many errors they are away from nothing. */
    static String says(Corners c) {
        List<String> words = new ArrayList<>();
        if (c.misplaced()) {
            words.add(say("%sspacing, %s", slight(spacingLoss(c)), sure(c.spacingPx(), c.spacingErrorPx())));
        }
        if (c.tilted() && !mostlyOneWay(c)) {
            words.add(say(
                    "%stilt towards %s, %s",
                    slight(tiltLoss(c)), side(c.tiltDirectionDeg()), sure(c.tiltPx(), c.tiltErrorPx())));
        }
        if (mostlyOneWay(c)) {
            words.add(say(
                    "%stilt about a middle in focus, wider towards %s, %s",
                    slight(oneWayLoss(c)), sides(c), sure(c.oneWayPx(), c.oneWayErrorPx())));
        }
        return words.isEmpty() ? "neither, within errors" : Words.list(words);
    }

    private static String sure(double px, double error) {
        return say("%s times its error", Math.round(px / error));
    }

    private static String sides(Corners c) {
        return side(c.oneWayDirectionDeg()) + " and " + side(c.oneWayDirectionDeg() + 180);
    }

    private static String slight(double loss) {
        return loss < Limit.STANDS_OUT ? "slight " : "";
    }

    private static double spacingLoss(Corners c) {
        return c.spacingPx() / (c.centrePx() + c.spacingPx());
    }

    /** At the wide end of the diagonal, against the middle. */
    private static double tiltLoss(Corners c) {
        return c.tiltPx() / (2 * c.centrePx() + c.tiltPx());
    }

    private static boolean mostlyOneWay(Corners c) {
        return c.oneWay() && oneWayLoss(c) > tiltLoss(c);
    }

    /** At both ends of the axis, against what would stay. */
    private static double oneWayLoss(Corners c) {
        return c.oneWayPx() / (c.centrePx() + c.risePx() + c.oneWayPx() / 2);
    }

    private static Limit spacing(Corners c, OptionalDouble spacingErrorMm) {
        double loss = spacingLoss(c);
        String text = say(
                "Stars widen alike towards all corners, by %s: looks like the distance from corrector to sensor.",
                percent(c.spacingPx() / c.centrePx()));
        String settle = "Measure that distance with a calliper, or take one night with a ring of 0.5 mm more or less: "
                + "the corners answer at once.";
        String evidence = say(
                "%s in the middle, %s ± %s more in the corners, from %s",
                px(c.centrePx()), fixed(c.spacingPx(), 2), px(c.spacingErrorPx()), stars(c));
        return SharpnessLimits.limit("spacing", loss, text, settle, evidence + parts(spacingErrorMm));
    }

    private static String parts(OptionalDouble errorMm) {
        if (errorMm.isEmpty()) {
            return "; the star shapes do not tell which way, and the rig’s note does not tell every length";
        }
        double error = errorMm.getAsDouble();
        return Math.abs(error) < 0.3
                ? say(
                        "; yet the parts of the train sum up to within %s mm of what is wanted",
                        fixed(Math.abs(error), 2))
                : say(
                        "; by its parts the train is %s mm too %s",
                        fixed(Math.abs(error), 2), error < 0 ? "short" : "long");
    }

    private static Limit oneWay(Corners c) {
        String text = say(
                "Stars widen towards %s, and not across: looks like a tilted sensor whose middle is in focus.",
                sides(c));
        String evidence = say(
                "%s ± %s px more along %s° from +x towards +y than across, %s in the middle, from %s",
                fixed(c.oneWayPx(), 2),
                fixed(c.oneWayErrorPx(), 2),
                Math.round(c.oneWayDirectionDeg()),
                px(c.centrePx()),
                stars(c));
        return SharpnessLimits.limit("tilt", oneWayLoss(c), text, TURN, evidence);
    }

    private static Limit tilt(Corners c) {
        double loss = tiltLoss(c);
        String text = say(
                "Stars widen from one side of the field to the other, towards %s: looks like a tilted sensor.",
                side(c.tiltDirectionDeg()));
        String evidence = say(
                "%s ± %s px across the diagonal towards %s° from +x towards +y, %s in the middle, from %s",
                fixed(c.tiltPx(), 2),
                fixed(c.tiltErrorPx(), 2),
                Math.round(c.tiltDirectionDeg()),
                px(c.centrePx()),
                stars(c));
        return SharpnessLimits.limit("tilt", loss, text, TURN, evidence);
    }

    private static String stars(Corners c) {
        return Words.count(c.stars(), "star", "stars");
    }

    /** As pictures stand here, with the first row at the bottom. */
    static String side(double directionDeg) {
        String[] sides = {
            "the right",
            "the upper right",
            "the top",
            "the upper left",
            "the left",
            "the lower left",
            "the bottom",
            "the lower right"
        };
        return sides[Math.floorMod(Math.round(directionDeg / 45), 8)];
    }
}
