package noctuary.review;

import java.util.OptionalDouble;

/**
 * One measure before against after.
 *
 * @param before middle of the nights before
 * @param after middle of the nights after
 * @param shift after minus before; the one that the verdict rests on
 * @param low lower end of the shift's interval at {@code coverage}
 * @param coverage what the interval reaches, 0 to 1
 * @param p two-sided, of no shift at all
 * @param adjustedP the same, corrected for the measures compared together; absent for one that could not be tested
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
        String why,
        Grounds grounds) {}
