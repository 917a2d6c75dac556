package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import noctuary.entry.RigNote;
import noctuary.entry.RigNote.Part;
import noctuary.entry.Typed;
import noctuary.fact.Fact;
import noctuary.fact.Fact.Reading;
import noctuary.fact.Origin.Input;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;
import noctuary.measure.RigSheet.NamedFact;
import noctuary.rig.RigFigures;

/** The facts of a rig on a date, each with its formula and inputs, or what the note does not give. */
final class RigFacts {
    private final RigContext rig;
    private final List<Part> train;
    private final List<Part> payload;
    private final Map<String, String> missing;

    private RigFacts(RigContext rig, List<Part> train, List<Part> payload, Map<String, String> missing) {
        this.rig = rig;
        this.train = train;
        this.payload = payload;
        this.missing = missing;
    }

    static List<NamedFact> on(RigNote note, LocalDate date, RigContext rig) {
        Map<String, String> missing = RigFigures.missing(rig.spec());
        RigFacts facts = new RigFacts(rig, note.trainOn(date), note.payloadOn(date), missing);
        return Stream.of(facts.scale(), facts.field(), facts.diffraction(), facts.mechanics())
                .flatMap(List::stream)
                .toList();
    }

    private List<NamedFact> scale() {
        return List.of(
                named("effectiveFocalLengthMm", "Focal length in use", rig.focalLength()),
                named("focalRatio", "Focal ratio", rig.focalRatio()),
                named("imageScaleArcsecPerPx", "Image scale", rig.imageScale(1)));
    }

    private List<NamedFact> field() {
        List<Input> scale = join(rig.optics("focal length", "reducer"), camera("pixel"));
        String side = "2 atan(N p / 2 f)";
        RigFigures f = rig.figures();
        return List.of(
                named(
                        "fieldWidthDeg",
                        "Field width",
                        field(f.fieldWidthDeg(), Unit.DEGREE, side, join(scale, camera("width")))),
                named(
                        "fieldHeightDeg",
                        "Field height",
                        field(f.fieldHeightDeg(), Unit.DEGREE, side, join(scale, camera("height")))),
                named(
                        "sensorDiagonalMm",
                        "Sensor diagonal",
                        field(
                                f.sensorDiagonalMm(),
                                Unit.MILLIMETRE,
                                "p sqrt(W² + H²)",
                                camera("pixel", "width", "height"))));
    }

    private List<NamedFact> diffraction() {
        List<Input> light = rig.optics("aperture");
        List<Input> ratio = join(rig.optics("focal length", "reducer"), light);
        RigFigures f = rig.figures();
        return List.of(
                named(
                        "airyFwhmArcsec",
                        "Diffraction FWHM at 550 nm",
                        diffraction(f.airyFwhmArcsec(), "1.029 λ / D", light)),
                named(
                        "rayleighArcsec",
                        "Rayleigh limit at 550 nm",
                        diffraction(f.rayleighArcsec(), "1.220 λ / D", light)),
                named(
                        "depthOfFocusUm",
                        "Depth of focus at 550 nm, either side",
                        RigContext.reading(f.depthOfFocusUm(), Unit.MICROMETRE, "2 λ N²", "depth-of-focus", ratio)));
    }

    private List<NamedFact> mechanics() {
        RigFigures f = rig.figures();
        List<Input> glass = typed(train, Part::glass, ", glass");
        return List.of(
                named(
                        "backFocusRequiredMm",
                        "Back focus required",
                        RigContext.reading(
                                f.backFocusRequiredMm(),
                                Unit.MILLIMETRE,
                                "as the maker states + glass × (n - 1) / n",
                                "back-focus",
                                join(rig.optics("back focus"), glass))),
                named(
                        "backFocusActualMm",
                        "Back focus in the train",
                        RigContext.reading(
                                f.backFocusActualMm(),
                                Unit.MILLIMETRE,
                                "sum of the lengths from the corrector to the sensor",
                                "back-focus",
                                typed(train, Part::length, ""))),
                named(
                        "payloadKg",
                        "Load on the mount",
                        RigContext.reading(
                                f.payloadKg(),
                                Unit.KILOGRAM,
                                "sum of the parts",
                                "mount-load",
                                typed(payload, Part::mass, ""))));
    }

    private static Optional<Reading<Quantity>> field(
            OptionalDouble value, Unit unit, String formula, List<Input> inputs) {
        return RigContext.reading(value, unit, formula, "field", inputs);
    }

    private static Optional<Reading<Quantity>> diffraction(OptionalDouble value, String formula, List<Input> inputs) {
        return RigContext.reading(value, Unit.ARCSECOND, formula, "diffraction", inputs);
    }

    private NamedFact named(String id, String label, Optional<Reading<Quantity>> reading) {
        return new NamedFact(
                id,
                label,
                reading.map(Readings::known)
                        .orElseGet(() -> Fact.missing(missing.getOrDefault(id, "its inputs give no finite number"))));
    }

    private List<Input> camera(String... keys) {
        return RigContext.typed(rig.note().camera(), keys);
    }

    private static List<Input> typed(
            List<Part> parts, Function<Part, Optional<Typed<Quantity>>> what, String ofThePart) {
        return parts.stream()
                .flatMap(p -> what.apply(p).map(t -> new Input(p.name() + ofThePart, t.text(), t.origin())).stream())
                .toList();
    }

    private static List<Input> join(List<Input> a, List<Input> b) {
        List<Input> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }
}
