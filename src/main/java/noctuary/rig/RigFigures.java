package noctuary.rig;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What arithmetic says of a rig; absent where an input is.
 *
 * @param imageScaleArcsecPerPx 206.264806 p / f (p in µm, f in mm)
 * @param fieldWidthDeg exact for a tangent projection, 2 atan(N p / 2 f)
 * @param airyFwhmArcsec 1.02899 λ / D at 550 nm, unobstructed
 * @param rayleighArcsec 1.21967 λ / D at 550 nm
 * @param depthOfFocusUm ± 2 λ N² at 550 nm
 * @param backFocusRequiredMm as the maker states plus t (n - 1) / n for each filter glass
 * @param backFocusActualMm sum of the part lengths from the corrector to the sensor
 */
public record RigFigures(
        OptionalDouble effectiveFocalLengthMm,
        OptionalDouble focalRatio,
        OptionalDouble imageScaleArcsecPerPx,
        OptionalDouble fieldWidthDeg,
        OptionalDouble fieldHeightDeg,
        OptionalDouble sensorDiagonalMm,
        OptionalDouble airyFwhmArcsec,
        OptionalDouble rayleighArcsec,
        OptionalDouble depthOfFocusUm,
        OptionalDouble backFocusRequiredMm,
        OptionalDouble backFocusActualMm,
        OptionalDouble payloadKg,
        List<Check> checks) {
    public RigFigures {
        checks = List.copyOf(checks);
    }

    public static RigFigures of(RigSpec rig) {
        throw new UnsupportedOperationException("not built yet: " + rig);
    }
}
