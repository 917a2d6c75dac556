package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin;
import noctuary.fact.Origin.Derived;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.rig.RigFigures;
import noctuary.rig.RigSpec;

/** A rig on a date: what arithmetic says, and which typed lines it rests on. */
record RigContext(RigNote note, RigSpec spec, RigFigures figures) {
    static RigContext on(RigNote note, LocalDate date) {
        RigSpec spec = RigSpecs.on(note, date);
        return new RigContext(note, spec, RigFigures.of(spec));
    }

    Optional<Reading<Quantity>> focalLength() {
        return reading(
                figures.effectiveFocalLengthMm(),
                Unit.MILLIMETRE,
                "focal length × reducer",
                "focal-length",
                optics("focal length", "reducer"));
    }

    Optional<Reading<Quantity>> focalRatio() {
        return reading(
                figures.focalRatio(),
                Unit.NONE,
                "focal length × reducer / aperture",
                "focal-ratio",
                optics("focal length", "reducer", "aperture"));
    }

    /** @param binning of the frame; the rig's pixel is the sensor's */
    Optional<Reading<Quantity>> imageScale(int binning) {
        List<Input> inputs = optics("focal length", "reducer");
        inputs.addAll(typed(note.camera(), "pixel"));
        String formula = "206.265 p / f" + (binning > 1 ? ", p binned " + binning + " × " + binning : "");
        return reading(figures.imageScaleArcsecPerPx(), Unit.ARCSECOND_PER_PIXEL, formula, "image-scale", inputs)
                .map(r -> new Reading<>(
                        Quantity.of(r.value().value() * binning, r.value().unit()), r.origin()));
    }

    Optional<Reading<Quantity>> camera(String key) {
        return Optional.ofNullable(note.camera().get(key)).map(t -> new Reading<>(t.value(), t.origin()));
    }

    List<Input> optics(String... keys) {
        return typed(note.optics(), keys);
    }

    static List<Input> typed(Map<String, Typed<Quantity>> values, String... keys) {
        List<Input> inputs = new ArrayList<>();
        for (String key : keys) {
            Typed<Quantity> value = values.get(key);
            if (value != null) {
                inputs.add(new Input(key, value.text(), value.origin()));
            }
        }
        return inputs;
    }

    static Optional<Reading<Quantity>> reading(
            OptionalDouble value, Unit unit, String formula, String method, List<Input> inputs) {
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Origin origin = new Derived(formula, method, inputs);
        return Optional.of(new Reading<>(Quantity.of(value.getAsDouble(), unit), origin));
    }
}
