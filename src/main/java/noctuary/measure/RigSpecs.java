package noctuary.measure;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Quantity;
import noctuary.rig.RigSpec;
import noctuary.rig.RigSpec.Camera;
import noctuary.rig.RigSpec.Joint;
import noctuary.rig.RigSpec.Load;
import noctuary.rig.RigSpec.Optics;
import noctuary.rig.RigSpec.TrainPart;

/** A keeper's rig, as it was on a date, as the arithmetic wants it. */
public final class RigSpecs {
    private RigSpecs() {}

    public static RigSpec on(RigNote note, LocalDate date) {
        Map<String, Typed<Quantity>> o = note.optics();
        Map<String, Typed<Quantity>> c = note.camera();
        return new RigSpec(
                new Optics(
                        number(o, "aperture"),
                        number(o, "focal length"),
                        number(o, "reducer"),
                        number(o, "back focus"),
                        number(o, "image circle")),
                new Camera(
                        number(c, "pixel"),
                        whole(c, "width"),
                        whole(c, "height"),
                        number(c, "read noise"),
                        number(c, "gain"),
                        number(c, "full well")),
                note.trainOn(date).stream().map(RigSpecs::part).toList(),
                number(note.mountCapacity()),
                payload(note, date));
    }

    private static TrainPart part(RigNote.Part part) {
        return new TrainPart(
                part.name(), number(part.length()), number(part.glass()), joint(part.front()), joint(part.rear()));
    }

    private static Optional<Joint> joint(Optional<Typed<String>> typed) {
        return typed.map(t -> Joint.parse(t.value()));
    }

    private static List<Load> payload(RigNote note, LocalDate date) {
        return note.payloadOn(date).stream()
                .filter(p -> p.mass().isPresent())
                .map(p -> new Load(p.name(), p.mass().get().value().value()))
                .toList();
    }

    private static OptionalDouble number(Map<String, Typed<Quantity>> typed, String key) {
        return number(Optional.ofNullable(typed.get(key)));
    }

    private static OptionalDouble number(Optional<Typed<Quantity>> typed) {
        return typed.map(t -> OptionalDouble.of(t.value().value())).orElseGet(OptionalDouble::empty);
    }

    private static OptionalInt whole(Map<String, Typed<Quantity>> typed, String key) {
        return typed.containsKey(key)
                ? OptionalInt.of((int) Math.round(typed.get(key).value().value()))
                : OptionalInt.empty();
    }
}
