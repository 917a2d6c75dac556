package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.percent;
import static noctuary.advice.Words.say;

import java.util.OptionalDouble;
import noctuary.measure.NoiseOverTime;

/**
 * What noise against time says: whether it falls with the root of the time, and if not, where it stops and why.
 *
 * @param course measured on the entry's own frames
 */
public record NoiseFall(NoiseOverTime course) {
    /** Variance that stays, over what averages out, that is worth a word: a tenth of the noise. */
    private static final double LEAST_STAYING = 0.2;
    /** Noise of the mean over what the first frames foretold, that is worth a word. */
    private static final double ROUGHER = 1.1;
    /** A pattern that moved less against the stars stays in its place; common practice, no source. */
    private static final double MOVED_PX = 2;

    /** Why noise does not fall with the root of the time, or that it does. */
    public enum Why {
        FALLS,
        ROUGHER_SKY,
        SENSOR,
        SKY,
        UNTOLD
    }

    public Why why() {
        if (stays()) {
            if (course.movedPx() < MOVED_PX) {
                return Why.UNTOLD;
            }
            return course.onSensor() > course.onSky() ? Why.SENSOR : Why.SKY;
        }
        return rougher() > ROUGHER ? Why.ROUGHER_SKY : Why.FALLS;
    }

    private boolean stays() {
        return course.onSky() > LEAST_STAYING;
    }

    /** What the frames alone foretell for all of them, over what the first of them did. */
    private double rougher() {
        NoiseOverTime.Point first = course.points().get(0);
        NoiseOverTime.Point last = course.last();
        return last.foretold() / (first.foretold() * Math.sqrt((double) first.frames() / last.frames()));
    }

    /** Frames from which on half of the variance no longer averages out; absent where nothing stays. */
    OptionalDouble stopFrames() {
        return stays() ? OptionalDouble.of(course.last().frames() / course.onSky()) : OptionalDouble.empty();
    }

    /** Share of the variance of a mean of so many frames that does not average out: 0 where only stars and nebula stay. */
    double stayingShare(double frames) {
        double overFresh = why() == Why.SENSOR || why() == Why.UNTOLD
                ? course.onSky() * frames / course.last().frames()
                : 0;
        return overFresh / (1 + overFresh);
    }

    public String sentence() {
        NoiseOverTime.Point last = course.last();
        String numbers = say(
                "One frame has a noise of %s ± %s counts, from the differences between frames; the mean of %s has %s, "
                        + "where the root of the time foretells %s. ",
                fixed(course.single(), 2),
                fixed(course.singleError(), 2),
                last.frames(),
                fixed(last.noise(), 2),
                fixed(last.foretold(), 2));
        return numbers + verdict();
    }

    private String verdict() {
        return switch (why()) {
            case FALLS -> "So far the noise falls with the root of the time.";
            case ROUGHER_SKY ->
                say(
                        "It falls more slowly than the first frames promised, by %s: later frames were noisier for their "
                                + "star light. The sky grew brighter or less clear; what stays the same in all frames is "
                                + "no more than a tenth.",
                        percent(rougher() - 1));
            case SENSOR ->
                stop() + "It stays where the pixels stay, not where the stars do: a pattern of the sensor that "
                        + "calibration left, and that the pointing moved over too little.";
            case SKY ->
                stop()
                        + "It stays where the stars stay: faint stars and nebula rather than noise, so more exposure still "
                        + "deepens the picture.";
            case UNTOLD ->
                stop()
                        + "The pointing moved by less than two pixels, so it may be a pattern of the sensor or faint stars "
                        + "and nebula: shift the pointing between exposures, and the next night tells.";
        };
    }

    private String stop() {
        return say(
                "Something stays that does not average out: from about %s on it is half of what looks like noise. ",
                Words.count(Math.max(1, Math.round(stopFrames().orElseThrow())), "frame", "frames"));
    }
}
