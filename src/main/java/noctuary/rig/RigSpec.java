package noctuary.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A rig as the arithmetic needs it, on one date; whatever the keeper did not write is absent. */
public record RigSpec(
        Optics optics, Camera camera, List<TrainPart> train, OptionalDouble mountCapacityKg, List<Load> payload) {
    public RigSpec {
        train = List.copyOf(train);
        payload = List.copyOf(payload);
    }

    RigSpec with(Optics others) {
        return new RigSpec(others, camera, train, mountCapacityKg, payload);
    }

    RigSpec with(Camera other) {
        return new RigSpec(optics, other, train, mountCapacityKg, payload);
    }

    RigSpec with(List<TrainPart> others, List<Load> loads) {
        return new RigSpec(optics, camera, others, mountCapacityKg, loads);
    }

    RigSpec carriedBy(OptionalDouble capacityKg) {
        return new RigSpec(optics, camera, train, capacityKg, payload);
    }

    /** @param reducer factor on the focal length, below 1 for a reducer, above 1 for an extender */
    public record Optics(
            OptionalDouble apertureMm,
            OptionalDouble focalLengthMm,
            OptionalDouble reducer,
            OptionalDouble backFocusMm,
            OptionalDouble imageCircleMm) {}

    public record Camera(
            OptionalDouble pixelUm,
            OptionalInt width,
            OptionalInt height,
            OptionalDouble readNoiseE,
            OptionalDouble gainEPerAdu,
            OptionalDouble fullWellE) {}

    /** One part between corrector and sensor, in order; front faces the sky. */
    public record TrainPart(
            String name,
            OptionalDouble lengthMm,
            OptionalDouble glassMm,
            Optional<Joint> front,
            Optional<Joint> rear) {}

    /**
     * A thread as typed, such as {@code M48x0.75 male}, or a push fit.
     *
     * @param diameterMm nominal; NaN where the text was not understood
     * @param pitchMm 0 for a push fit; NaN where the text was not understood
     */
    public record Joint(String text, double diameterMm, double pitchMm, boolean male) {
        /**
         * Reads {@code M48x0.75 male}, {@code 2 in x 24 tpi female} or {@code 1.25 in push-fit male}. Never fails: a
         * joint written otherwise is kept {@linkplain #unread() unread}, and the rig's checks tell how to write it.
         */
        public static Joint parse(String text) {
            return JointText.read(text);
        }

        public boolean unread() {
            return Double.isNaN(diameterMm);
        }
    }

    public record Load(String name, double massKg) {}
}
