package noctuary.review;

import java.util.OptionalDouble;

/**
 * After minus before, in the measure's unit, as it is on a night like the middle one before.
 *
 * @param low lower end of the interval at {@code coverage}; infinite without any
 * @param coverage 0 to 1
 * @param p two-sided, of no shift at all
 * @param share the shift over the middle night before; absent when that is not positive
 * @param shareLow lower end of the interval of the share
 */
public record Shift(
        double value,
        double low,
        double high,
        double coverage,
        double p,
        OptionalDouble share,
        OptionalDouble shareLow,
        OptionalDouble shareHigh) {
    /** Whether it has an interval that may hold the truth; a single night on both sides has none. */
    public boolean bounded() {
        return Double.isFinite(low) && Double.isFinite(high) && coverage > 0;
    }
}
