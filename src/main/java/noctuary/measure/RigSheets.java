package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import noctuary.entry.Journal;
import noctuary.entry.RigNote;
import noctuary.fact.Fact;
import noctuary.fact.Origin.Input;
import noctuary.fact.Unit;
import noctuary.measure.RigSheet.NamedFact;
import noctuary.measure.RigSheet.State;
import noctuary.rig.RigFigures;

/** Makes the sheets of the rigs. */
public final class RigSheets {
    private RigSheets() {}

    /** By id, in the journal's order. */
    public static Map<String, RigSheet> of(Journal journal, List<EntrySheet> entries) {
        Map<String, RigSheet> sheets = new LinkedHashMap<>();
        journal.rigs().forEach((id, note) -> sheets.put(id, new RigSheet(note, states(note), slugs(id, entries))));
        return sheets;
    }

    private static List<State> states(RigNote note) {
        List<LocalDate> dates = new ArrayList<>(note.partChanges());
        LocalDate first = note.from().orElse(LocalDate.MIN);
        if (dates.isEmpty() || first.isBefore(dates.get(0))) {
            dates.add(0, first);
        }
        return dates.stream().map(date -> state(note, date)).toList();
    }

    private static State state(RigNote note, LocalDate date) {
        RigContext context = RigContext.on(note, date);
        return new State(
                date,
                note.trainOn(date),
                context.figures(),
                facts(context, note, date),
                context.figures().checks());
    }

    private static List<NamedFact> facts(RigContext rig, RigNote note, LocalDate date) {
        RigFigures f = rig.figures();
        List<Input> light = rig.optics("aperture");
        List<Input> lens = rig.optics("focal length", "reducer");
        List<Input> scale = join(lens, RigContext.typed(note.camera(), "pixel"));
        return List.of(
                new NamedFact(
                        "effectiveFocalLengthMm",
                        "Focal length in use",
                        rig.focalLength().map(Readings::known).orElse(Fact.missing("the rig has no focal length"))),
                new NamedFact(
                        "focalRatio",
                        "Focal ratio",
                        rig.focalRatio()
                                .map(Readings::known)
                                .orElse(Fact.missing("the rig has no focal length or aperture"))),
                new NamedFact(
                        "imageScaleArcsecPerPx",
                        "Image scale",
                        rig.imageScale(1)
                                .map(Readings::known)
                                .orElse(Fact.missing("the rig has no focal length or pixel"))),
                fact(
                        "fieldWidthDeg",
                        "Field width",
                        f.fieldWidthDeg(),
                        Unit.DEGREE,
                        "2 atan(N p / 2 f)",
                        "field",
                        join(scale, RigContext.typed(note.camera(), "width")),
                        "the rig has no focal length, pixel or width"),
                fact(
                        "fieldHeightDeg",
                        "Field height",
                        f.fieldHeightDeg(),
                        Unit.DEGREE,
                        "2 atan(N p / 2 f)",
                        "field",
                        join(scale, RigContext.typed(note.camera(), "height")),
                        "the rig has no focal length, pixel or height"),
                fact(
                        "sensorDiagonalMm",
                        "Sensor diagonal",
                        f.sensorDiagonalMm(),
                        Unit.MILLIMETRE,
                        "p sqrt(W² + H²)",
                        "field",
                        RigContext.typed(note.camera(), "pixel", "width", "height"),
                        "the rig has no pixel, width or height"),
                fact(
                        "airyFwhmArcsec",
                        "Diffraction FWHM at 550 nm",
                        f.airyFwhmArcsec(),
                        Unit.ARCSECOND,
                        "1.029 λ / D",
                        "diffraction",
                        light,
                        "the rig has no aperture"),
                fact(
                        "rayleighArcsec",
                        "Rayleigh limit at 550 nm",
                        f.rayleighArcsec(),
                        Unit.ARCSECOND,
                        "1.220 λ / D",
                        "diffraction",
                        light,
                        "the rig has no aperture"),
                fact(
                        "depthOfFocusUm",
                        "Depth of focus at 550 nm, either side",
                        f.depthOfFocusUm(),
                        Unit.MICROMETRE,
                        "2 λ N²",
                        "depth-of-focus",
                        join(lens, light),
                        "the rig has no focal length or aperture"),
                fact(
                        "backFocusRequiredMm",
                        "Back focus required",
                        f.backFocusRequiredMm(),
                        Unit.MILLIMETRE,
                        "as the maker states + glass × (n - 1) / n",
                        "back-focus",
                        join(rig.optics("back focus"), glass(note, date)),
                        "the rig has no back focus"),
                fact(
                        "backFocusActualMm",
                        "Back focus in the train",
                        f.backFocusActualMm(),
                        Unit.MILLIMETRE,
                        "sum of the lengths from the corrector to the sensor",
                        "back-focus",
                        lengths(note, date),
                        "a part of the train has no length"),
                fact(
                        "payloadKg",
                        "Load on the mount",
                        f.payloadKg(),
                        Unit.KILOGRAM,
                        "sum of the parts",
                        "mount-load",
                        masses(note),
                        "no part of the payload has a mass"));
    }

    private static NamedFact fact(
            String id,
            String label,
            OptionalDouble value,
            Unit unit,
            String formula,
            String method,
            List<Input> inputs,
            String why) {
        return new NamedFact(
                id,
                label,
                RigContext.reading(value, unit, formula, method, inputs)
                        .map(Readings::known)
                        .orElse(Fact.missing(why)));
    }

    private static List<Input> glass(RigNote note, LocalDate date) {
        return note.trainOn(date).stream()
                .flatMap(p -> p.glass().map(g -> new Input(p.name() + ", glass", g.text(), g.origin())).stream())
                .toList();
    }

    private static List<Input> lengths(RigNote note, LocalDate date) {
        return note.trainOn(date).stream()
                .flatMap(p -> p.length().map(l -> new Input(p.name(), l.text(), l.origin())).stream())
                .toList();
    }

    private static List<Input> masses(RigNote note) {
        return note.payload().stream()
                .flatMap(p -> p.mass().map(m -> new Input(p.name(), m.text(), m.origin())).stream())
                .toList();
    }

    private static List<Input> join(List<Input> a, List<Input> b) {
        List<Input> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    private static List<String> slugs(String id, List<EntrySheet> entries) {
        return entries.stream()
                .filter(e -> e.entry().rig().filter(r -> r.value().equals(id)).isPresent())
                .sorted(Comparator.comparing(e -> e.night().value().orElse(LocalDate.MAX)))
                .map(e -> e.entry().slug())
                .toList();
    }
}
