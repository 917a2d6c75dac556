package noctuary.stars;

/**
 * The sky under the stars.
 *
 * @param level robust mode of the whole plane, ADU
 * @param noise standard deviation per pixel, ADU
 * @param gradientPercent range of the smoothed background over the field, as a share of its level above {@code zero}
 *     (the pedestal cannot be known here, so of the level itself); NaN when the level is not positive
 */
public record Background(double level, double noise, double gradientPercent) {}
