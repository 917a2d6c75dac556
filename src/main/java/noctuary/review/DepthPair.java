package noctuary.review;

import java.util.OptionalDouble;

/**
 * The same stars in two images of one target.
 *
 * @param matched number of stars that agree
 * @param scaleRatio arcsec a pixel after over before, from the stars alone
 * @param rotationDeg counter-clockwise, from before to after
 * @param throughput electrons a second of the same star, after over before; absent with the reason in {@code why}
 * @param throughputError standard error
 * @param deeperMag by how much the limit of the later image is fainter at equal exposure, background-limited; faint stars
 *     that crowd a deep image count as background
 * @param why what is absent; empty when nothing is
 */
public record DepthPair(
        EntryNight before,
        EntryNight after,
        int matched,
        double scaleRatio,
        double rotationDeg,
        boolean mirrored,
        OptionalDouble throughput,
        OptionalDouble throughputError,
        OptionalDouble deeperMag,
        String why) {
    public String target() {
        return before.target();
    }

    /** Empty when none is told. */
    public String filterBefore() {
        return before.filter();
    }

    public String filterAfter() {
        return after.filter();
    }

    public boolean sameFilter() {
        return filterBefore().equals(filterAfter());
    }
}
