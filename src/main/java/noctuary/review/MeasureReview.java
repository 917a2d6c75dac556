package noctuary.review;

import java.util.OptionalDouble;

/**
 * One measure before against after.
 *
 * @param before centre of the nights before
 * @param shift after minus before
 * @param low lower end of the shift's interval at {@code coverage}
 * @param coverage what the interval truly reaches, 0 to 1
 * @param p two-sided, of no shift at all
 * @param adjustedP the same, corrected for the measures compared together
 * @param why one sentence
 */
public record MeasureReview(
        MeasureNights nights,
        OptionalDouble before,
        OptionalDouble after,
        OptionalDouble shift,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble coverage,
        OptionalDouble p,
        OptionalDouble adjustedP,
        Verdict verdict,
        String why) {}
