package noctuary.review;

import java.util.OptionalDouble;

/**
 * What a night tells of a measure.
 *
 * @param frames that the value was taken from; 1 for a stack or a typed line
 * @param why a sentence's end when there is no value: "... "; empty otherwise
 */
record Reading(OptionalDouble value, int frames, String why) {
    static Reading of(double value, int frames) {
        return new Reading(OptionalDouble.of(value), frames, "");
    }

    static Reading missing(String why) {
        return new Reading(OptionalDouble.empty(), 0, why);
    }
}
