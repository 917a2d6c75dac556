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

    /** A thread as typed, such as {@code M48x0.75 male}. */
    public record Joint(String text, double diameterMm, double pitchMm, boolean male) {}

    public record Load(String name, double massKg) {}
}
