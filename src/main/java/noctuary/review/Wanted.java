package noctuary.review;

/**
 * Nights that are still needed, if nights go on scattering as these did.
 *
 * @param before more of them
 * @param after more of them
 * @param share of the value before that they would show in four reviews out of five; 0 when nothing is known of the
 *     scatter, and the nights are only the fewest that could ever say anything
 */
public record Wanted(int before, int after, double share) {}
