package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.fact.Quantity;
import noctuary.measure.RigSheet;
import noctuary.rig.Optics;
import noctuary.stats.Robust;

/** Focal lengths as the sky told them: pixel and scale of entries that were matched to the sky. */
final class FocalLengths {
    /** Nominal focal lengths are off by as much without anything being wrong; common practice, no source. */
    private static final double AS_WRITTEN = 0.01;
    /** A night this far from the others had something else in the train. */
    private static final double ANOTHER_TRAIN = 0.01;

    private static final int FEWEST_NIGHTS = 4;

    private FocalLengths() {}

    /** What one entry tells. */
    record Length(EntryContext entry, double mm) {}

    /** Of those with world coordinates and a pixel pitch. */
    static List<Length> of(List<EntryContext> own) {
        List<Length> lengths = new ArrayList<>();
        for (EntryContext entry : own) {
            OptionalDouble pitch = entry.camera("pixel");
            OptionalDouble scale = entry.traits().onSky();
            if (pitch.isPresent() && scale.isPresent()) {
                lengths.add(new Length(entry, Optics.focalLengthMm(pitch.getAsDouble(), scale.getAsDouble())));
            }
        }
        return lengths;
    }

    static Optional<RigDesk.Focal> focal(RigSheet rig, List<Length> lengths) {
        if (lengths.isEmpty()) {
            return Optional.empty();
        }
        double[] mm = lengths.stream().mapToDouble(Length::mm).toArray();
        double measured = Robust.median(mm);
        Optional<Quantity> own =
                Optional.ofNullable(rig.note().optics().get("focal length")).map(t -> t.value());
        return Optional.of(new RigDesk.Focal(
                mm.length,
                measured,
                mm.length > 1 ? Robust.sigma(mm) : 0,
                rig.latest().figures().effectiveFocalLengthMm(),
                own.map(f -> OptionalDouble.of(measured / f.value())).orElseGet(OptionalDouble::empty)));
    }

    static List<Finding> findings(Optional<RigDesk.Focal> focal, List<Length> lengths) {
        List<Finding> findings = new ArrayList<>();
        focal.flatMap(FocalLengths::againstNote).ifPresent(findings::add);
        if (lengths.size() >= FEWEST_NIGHTS) {
            lengths.forEach(length -> odd(length, focal.orElseThrow()).ifPresent(findings::add));
        }
        return findings;
    }

    private static Optional<Finding> againstNote(RigDesk.Focal f) {
        if (f.nominalMm().isEmpty() || Math.abs(f.measuredMm() / f.nominalMm().getAsDouble() - 1) < AS_WRITTEN) {
            return Optional.empty();
        }
        String text = say(
                "The sky says %s mm of focal length, the note %s mm.",
                fixed(f.measuredMm(), 1), fixed(f.nominalMm().getAsDouble(), 1));
        return Optional.of(new Finding(
                "desk-focal-length",
                text,
                "Write the measured value into the rig’s note; a reducer’s factor depends on its spacing.",
                say(
                        "scale of %s matched to the sky, and the camera’s pixel",
                        Words.count(f.nights(), "entry", "entries"))));
    }

    private static Optional<Finding> odd(Length length, RigDesk.Focal f) {
        EntryContext entry = length.entry();
        double mm = length.mm();
        double off = mm / f.measuredMm() - 1;
        if (Math.abs(off) < Math.max(ANOTHER_TRAIN, 5 * f.spreadMm() / f.measuredMm())) {
            return Optional.empty();
        }
        String text = say(
                "On %s the focal length was %s %% %s than on the other nights: something in the train sat elsewhere.",
                entry.sheet().night().map(Object::toString).orElse(entry.slug()),
                fixed(100 * Math.abs(off), 1),
                off > 0 ? "longer" : "shorter");
        return Optional.of(new Finding(
                "desk-focal-length-" + entry.slug(),
                text,
                "Measure the distance from the corrector to the sensor, and see that every joint is screwed home.",
                say("%s mm against %s mm, from the sky", fixed(mm, 1), fixed(f.measuredMm(), 1))));
    }
}
