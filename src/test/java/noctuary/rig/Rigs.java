package noctuary.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Rigs for the tests. */
final class Rigs {
    static final RigSpec.Optics NO_OPTICS = new RigSpec.Optics(absent(), absent(), absent(), absent(), absent());
    static final RigSpec.Camera NO_CAMERA =
            new RigSpec.Camera(absent(), OptionalInt.empty(), OptionalInt.empty(), absent(), absent(), absent());

    private Rigs() {}

    /** The long tube of the journal format's example. */
    static RigSpec heron() {
        return new RigSpec(
                new RigSpec.Optics(mm(150), mm(750), mm(0.95), mm(55), mm(44)),
                new RigSpec.Camera(mm(3.3), OptionalInt.of(5120), OptionalInt.of(3840), mm(1.6), mm(0.3), mm(40000)),
                List.of(
                        part("corrector", absent(), "", "M48x0.75 male"),
                        part("spacer", mm(37.5), "M48x0.75 female", "M42x0.75 male"),
                        new RigSpec.TrainPart("filter", absent(), mm(2), Optional.empty(), Optional.empty()),
                        part("camera", mm(17.5), "M42x0.75 female", "")),
                mm(20),
                List.of(new RigSpec.Load("tube", 6.1), new RigSpec.Load("camera", 0.7)));
    }

    static RigSpec with(RigSpec.TrainPart... train) {
        return new RigSpec(
                new RigSpec.Optics(absent(), absent(), absent(), mm(55), absent()),
                NO_CAMERA,
                List.of(train),
                absent(),
                List.of());
    }

    static RigSpec.TrainPart part(String name, OptionalDouble lengthMm, String front, String rear) {
        return new RigSpec.TrainPart(name, lengthMm, absent(), joint(front), joint(rear));
    }

    static OptionalDouble mm(double value) {
        return OptionalDouble.of(value);
    }

    static OptionalDouble absent() {
        return OptionalDouble.empty();
    }

    static Check check(RigSpec rig, String id) {
        return RigFigures.of(rig).checks().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<RigSpec.Joint> joint(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(RigSpec.Joint.parse(text));
    }
}
