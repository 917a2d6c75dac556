package noctuary.review;

import java.util.OptionalDouble;

/**
 * The same stars in two images of one target.
 *
 * @param filterBefore empty when none is told
 * @param matched number of stars that agree
 * @param scaleRatio arcsec a pixel after over before, from the stars alone
 * @param rotationDeg counter-clockwise, from before to after
 * @param throughput electrons a second of the same star, after over before; absent with the reason in {@code why}
 * @param throughputError standard error
 * @param deeperMag by how much the limit of the later image is fainter at equal exposure, background-limited
 * @param deeperErrorMag standard error, of the match alone
 * @param why what is absent; empty when nothing is
 */
public record DepthPair(
        String target,
        String slugBefore,
        String slugAfter,
        String filterBefore,
        String filterAfter,
        int matched,
        double scaleRatio,
        double rotationDeg,
        boolean mirrored,
        OptionalDouble throughput,
        OptionalDouble throughputError,
        OptionalDouble deeperMag,
        OptionalDouble deeperErrorMag,
        String why) {
    public boolean sameFilter() {
        return filterBefore.equals(filterAfter);
    }
}
