package noctuary.stars;

import java.util.Set;

/**
 * One star as fitted: an elliptical Moffat profile, integrated over the pixels. A star that was found but not fitted
 * (saturated, blended, too faint, at the edge) carries the reason in its flags and NaN in the shape; so does one that
 * was left out because its part of the field has enough, without a flag.
 *
 * @param x 0-based pixel centre, sensor pixels
 * @param y as x, in file order
 * @param flux total above the background, ADU
 * @param fwhmPx geometric mean of both axes of the profile itself, before the pixel integrates it
 * @param ellipticity 1 - b/a, as fitted (noise included)
 * @param angleDeg of the long axis from +x towards +y, -90 to 90
 * @param halfFluxRadiusPx radius holding half the flux of the profile
 * @param snr signal-to-noise ratio of the flux
 * @param peak highest pixel above the background, ADU
 */
public record Star(
        double x,
        double y,
        double flux,
        double fwhmPx,
        double ellipticity,
        double angleDeg,
        double halfFluxRadiusPx,
        double snr,
        double peak,
        Set<Flag> flags) {
    public Star {
        flags = Set.copyOf(flags);
    }

    /** Why a star's shape does not count. */
    public enum Flag {
        SATURATED,
        BLENDED,
        EDGE,
        FAINT,
        BAD_FIT
    }

    /** Whether the shape was fitted and counts. */
    public boolean measured() {
        return flags.isEmpty() && !Double.isNaN(fwhmPx);
    }
}
