package noctuary.advice;

import static noctuary.advice.SharpnessLimits.limit;
import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.percent;
import static noctuary.advice.Words.say;

import java.util.ArrayList;
import java.util.List;

/**
 * What calibration has left in the stack, and what is cut off at the ends of the range. Streaks and bands do not average
 * out over neighbouring pixels as noise does, so they are weighed as the eye sees them, over eight pixels along.
 */
final class ResidueLimits {
    private static final double SEEN_OVER_PX = 8;
    /** Share of pixels cut off that is more than a few bright stars or dead pixels; a choice. */
    private static final double MUCH_PERCENT = 0.5;

    private ResidueLimits() {}

    static List<Limit> of(Depth d) {
        List<Limit> limits = new ArrayList<>();
        d.streak().ifPresent(s -> limits.add(streaks(s)));
        d.stackBanding().ifPresent(b -> limits.add(banding(b)));
        if (d.clippedBlackPercent() >= MUCH_PERCENT) {
            limits.add(clipped("black", d.clippedBlackPercent(), "raise the offset of the camera"));
        }
        if (d.clippedWhitePercent() >= MUCH_PERCENT) {
            limits.add(clipped(
                    "white", d.clippedWhitePercent(), "expose shorter, or add a short set for the bright parts"));
        }
        return limits;
    }

    private static Limit streaks(double strength) {
        double loss = lossOf(strength);
        String text = say(
                "Faint parallel streaks lie in the background: over eight pixels they make up %s of what looks like "
                        + "noise.",
                percent(loss));
        String settle = "Shift the pointing by some pixels in changing directions between exposures: streaks of the "
                + "sensor go, streaks of the sky stay.";
        return limit("streaks", loss, text, settle, evidence("streaks", strength));
    }

    private static Limit banding(double strength) {
        double loss = lossOf(strength);
        String text = say(
                "Rows or columns are banded: over eight pixels that makes up %s of what looks like noise.",
                percent(loss));
        String settle =
                "Combine the dark frames alone: bands that show there too belong to the sensor, not to the sky.";
        return limit("banding", loss, text, settle, evidence("bands", strength));
    }

    private static double lossOf(double strength) {
        return 1 - 1 / Math.sqrt(1 + SEEN_OVER_PX * strength * strength);
    }

    private static String evidence(String what, double strength) {
        return say("%s of %s of the noise of a pixel", what, fixed(strength, 2));
    }

    private static Limit clipped(String end, double percent, String cure) {
        String text = say(
                "%s %% of the pixels are cut off at the %s end: what they recorded is lost.", fixed(percent, 1), end);
        return limit(
                "clipping",
                Limit.LOST_FOR_GOOD,
                text,
                say("Look at single frames as they come from the camera; if they are cut off too, %s.", cure),
                say("%s %% of the pixels at the %s end of the range", fixed(percent, 1), end));
    }
}
