package noctuary.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    private static final double MILLIGRAMS_PER_KG = 1e6;

    public RigFigures {
        checks = List.copyOf(checks);
    }

    public static RigFigures of(RigSpec rig) {
        RigSpec.Optics optics = rig.optics();
        OptionalDouble pixelUm = rig.camera().pixelUm();
        OptionalDouble focal = effectiveFocalLength(optics);
        OptionalDouble ratio = Maybe.of(focal, optics.apertureMm(), Optics::focalRatio);
        OptionalDouble scale = Maybe.of(pixelUm, focal, Optics::imageScaleArcsecPerPx);
        Sensor sensor = Sensor.of(rig.camera());
        OptionalDouble airy = Maybe.of(optics.apertureMm(), d -> Optics.airyFwhmArcsec(Optics.GREEN_NM, d));
        Spacing spacing = Spacing.of(rig);
        OptionalDouble payload = payload(rig);
        List<Check> checks = new ArrayList<>();
        SamplingCheck.of(scale, airy, pixelUm, ratio).ifPresent(checks::add);
        SpacingCheck.of(spacing).ifPresent(checks::add);
        checks.addAll(JointChecks.of(rig.train()));
        CircleCheck.of(sensor.diagonalMm(), optics.imageCircleMm()).ifPresent(checks::add);
        LoadCheck.of(payload, rig.mountCapacityKg()).ifPresent(checks::add);
        return new RigFigures(
                focal,
                ratio,
                scale,
                Maybe.of(sensor.widthMm(), focal, Optics::fieldDeg),
                Maybe.of(sensor.heightMm(), focal, Optics::fieldDeg),
                sensor.diagonalMm(),
                airy,
                Maybe.of(optics.apertureMm(), d -> Optics.rayleighArcsec(Optics.GREEN_NM, d)),
                Maybe.of(ratio, n -> Optics.depthOfFocusUm(Optics.GREEN_NM, n)),
                spacing.requiredMm(),
                spacing.actualMm(),
                payload,
                checks);
    }

    /** Why a figure of {@link #of} is absent, by the name of the component; nothing for those that are there. */
    public static Map<String, String> missing(RigSpec rig) {
        return Missing.of(rig);
    }

    private static OptionalDouble effectiveFocalLength(RigSpec.Optics optics) {
        double factor = optics.reducer().orElse(1);
        return Maybe.of(optics.focalLengthMm(), f -> Optics.effectiveFocalLengthMm(f, factor));
    }

    /** Added up in whole milligrams, so that no binary fractions collect. */
    private static OptionalDouble payload(RigSpec rig) {
        long milligrams = rig.payload().stream()
                .mapToLong(load -> Math.round(load.massKg() * MILLIGRAMS_PER_KG))
                .sum();
        return rig.payload().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(milligrams / MILLIGRAMS_PER_KG);
    }
}
