package noctuary.site;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.entry.RigNote;
import noctuary.entry.RigNote.Part;
import noctuary.entry.Typed;
import noctuary.fact.Fact;
import noctuary.fact.Origin;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.measure.RigSheet;
import noctuary.rig.RigFigures;
import noctuary.rig.RigSpec;

/** The two rigs of the fixture. */
final class FixtureRigs {
    private FixtureRigs() {}

    static <T> Typed<T> typed(T value, String key, String text) {
        return new Typed<>(value, "entries/rigs/heron.md", 5, key, text);
    }

    static Map<String, RigNote> notes() {
        Map<String, RigNote> notes = new LinkedHashMap<>();
        notes.put("wren", note("wren", "Wren, the short tube", "2025-04-20", "2025-05-19", 500, List.of()));
        notes.put("heron", note("heron", "Heron, the long tube", "2025-05-20", "", 750, train(true)));
        return notes;
    }

    static Map<String, RigSheet> sheets() {
        Map<String, RigSheet> sheets = new LinkedHashMap<>();
        RigNote wren = notes().get("wren");
        RigNote heron = notes().get("heron");
        sheets.put(
                "wren",
                new RigSheet(wren, List.of(state("2025-04-20", List.of(), 500)), List.of("pinwheel", "short-tube")));
        sheets.put(
                "heron",
                new RigSheet(
                        heron,
                        List.of(state("2025-05-20", train(false), 750), state("2025-08-02", train(true), 750)),
                        List.of("long-tube", "dumbbell")));
        return sheets;
    }

    private static RigNote note(String id, String name, String from, String to, double focal, List<Part> train) {
        return new RigNote(
                id,
                "entries/rigs/" + id + ".md",
                typed(name, "name", name),
                Optional.of(LocalDate.parse(from)),
                to.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(to)),
                Map.of("focal length", typed(mm(focal), "focal length", focal + " mm")),
                Map.of(),
                Optional.empty(),
                train,
                Optional.of("the grey one"),
                Optional.of(typed(Quantity.of(20, Unit.KILOGRAM), "capacity", "20 kg")),
                List.of(part("tube", "", 0, 6.1, "", ""), part("camera", "", 0, 0.7, "", "")),
                List.of(
                        new RigNote.Price("tube", new BigDecimal("640"), "EUR"),
                        new RigNote.Price("camera", new BigDecimal("899.50"), "EUR")),
                "<p>Bought in May; the corrector wants its distance to half a millimetre.</p>",
                List.of());
    }

    private static List<Part> train(boolean longer) {
        List<Part> parts = new ArrayList<>();
        parts.add(part("corrector", "", 0, 0, "", "M48x0.75 male"));
        parts.add(part(
                "spacer", longer ? "2025-08-02" : "", longer ? 38.7 : 37.5, 0, "M48x0.75 female", "M42x0.75 male"));
        parts.add(new Part(
                "filter",
                Optional.empty(),
                Optional.empty(),
                Optional.of(typed(mm(2), "glass", "2 mm")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        parts.add(part("camera", "", 17.5, 0, "M42x0.75 female", ""));
        return parts;
    }

    private static Part part(String name, String since, double lengthMm, double massKg, String front, String rear) {
        return new Part(
                name,
                since.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(since)),
                lengthMm == 0 ? Optional.empty() : Optional.of(typed(mm(lengthMm), "length", lengthMm + " mm")),
                Optional.empty(),
                massKg == 0
                        ? Optional.empty()
                        : Optional.of(typed(Quantity.of(massKg, Unit.KILOGRAM), "mass", massKg + " kg")),
                front.isEmpty() ? Optional.empty() : Optional.of(typed(front, "front", front)),
                rear.isEmpty() ? Optional.empty() : Optional.of(typed(rear, "rear", rear)));
    }

    private static RigSheet.State state(String from, List<Part> train, double focalMm) {
        RigFigures figures = RigFigures.of(new RigSpec(
                new RigSpec.Optics(
                        OptionalDouble.of(150),
                        OptionalDouble.of(focalMm),
                        OptionalDouble.of(0.95),
                        OptionalDouble.of(55),
                        OptionalDouble.of(44)),
                new RigSpec.Camera(
                        OptionalDouble.of(3.3),
                        OptionalInt.of(5120),
                        OptionalInt.of(3840),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()),
                train.stream().map(FixtureRigs::spec).toList(),
                OptionalDouble.of(20),
                List.of(new RigSpec.Load("tube", 6.1), new RigSpec.Load("camera", 0.7))));
        Origin typed = new Origin.Typed("entries/rigs/heron.md", 4, "focal length", "750 mm");
        Origin scale = new Origin.Derived(
                "206.265 × pixel pitch / focal length",
                "image-scale",
                List.of(new Origin.Input("focal length", "750 mm", typed)));
        List<RigSheet.NamedFact> facts = List.of(
                new RigSheet.NamedFact(
                        "imageScaleArcsecPerPx",
                        "Image scale",
                        Fact.of(
                                Quantity.of(figures.imageScaleArcsecPerPx().orElseThrow(), Unit.ARCSECOND_PER_PIXEL),
                                scale)),
                new RigSheet.NamedFact(
                        "backFocusMm", "Back focus", Fact.missing("the camera’s own length is not written")));
        return new RigSheet.State(LocalDate.parse(from), train, figures, facts, figures.checks());
    }

    private static RigSpec.TrainPart spec(Part part) {
        return new RigSpec.TrainPart(
                part.name(),
                part.length().map(l -> OptionalDouble.of(l.value().value())).orElse(OptionalDouble.empty()),
                part.glass().map(l -> OptionalDouble.of(l.value().value())).orElse(OptionalDouble.empty()),
                part.front().map(j -> RigSpec.Joint.parse(j.value())),
                part.rear().map(j -> RigSpec.Joint.parse(j.value())));
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
