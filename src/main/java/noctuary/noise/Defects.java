package noctuary.noise;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/**
 * What is wrong with the pixels of one plane, each zero when looked for and not found, absent when it could not be
 * looked for.
 *
 * @param hotPixels number of single pixels far above their neighbours
 * @param rowBanding excess standard deviation of row medians over white noise, ADU
 * @param columnBanding as rowBanding for columns
 * @param driftStreak strength of diagonal fixed-pattern streaks, as a share of the noise
 * @param clippedBlackPercent share of pixels at the lowest possible value
 * @param clippedWhitePercent share of pixels at or above saturation
 */
public record Defects(
        OptionalDouble hotPixels,
        OptionalDouble rowBanding,
        OptionalDouble columnBanding,
        OptionalDouble driftStreak,
        OptionalDouble clippedBlackPercent,
        OptionalDouble clippedWhitePercent) {

    /** Looks for all of them. */
    public static Defects find(Plane plane, Optional<Mosaic> mosaic, OptionalDouble saturationAdu) {
        throw new UnsupportedOperationException("not built yet: " + plane.width() + mosaic + saturationAdu);
    }
}
