package noctuary.measure;

import static noctuary.measure.Readings.derived;
import static noctuary.measure.Readings.input;
import static noctuary.measure.Readings.known;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import noctuary.fact.Fact;
import noctuary.fact.Origin.Input;
import noctuary.fact.Origin.Measured;
import noctuary.fact.Problem;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** Scale, focal length, pitch, field and focal ratio of an entry, and where their origins disagree. */
final class OpticsFigures {
    private final String noteFile;
    private final Map<Figure, Fact<Quantity>> figures = new EnumMap<>(Figure.class);
    private final List<Problem> problems = new ArrayList<>();

    /** @param source the files whose headers tell; empty when there are none, and the rig alone speaks */
    OpticsFigures(String noteFile, Optional<OpticsSource> source, Optional<RigContext> rig) {
        this.noteFile = noteFile;
        OpticsVoices voices = new OpticsVoices(source, rig);
        settle(Figure.IMAGE_SCALE, voices.scale(), "neither header nor rig tells pixel size and focal length");
        settle(Figure.FOCAL_LENGTH, voices.focalLength(), "neither header nor rig tells it");
        settle(Figure.PIXEL_PITCH, voices.pitch(), "neither header nor rig tells it");
        settle(Figure.FOCAL_RATIO, voices.focalRatio(), "neither header nor rig tells focal length and aperture");
        if (voices.pitchDoubtful()) {
            problems.add(Problem.notice(
                    noteFile,
                    "pixel pitch",
                    "the pixel size in the header may be that of the binned or of the single pixel; nothing tells which",
                    "write the camera's pixel in the rig"));
        }
        figures.put(Figure.FIELD_WIDTH, field("width", source, s -> s.report().width()));
        figures.put(Figure.FIELD_HEIGHT, field("height", source, s -> s.report().height()));
    }

    Map<Figure, Fact<Quantity>> figures() {
        return figures;
    }

    List<Problem> problems() {
        return problems;
    }

    private void settle(Figure figure, Voices voices, String why) {
        figures.put(figure, voices.settle(why));
        problems.addAll(voices.notices(noteFile));
    }

    private Fact<Quantity> field(String side, Optional<OpticsSource> source, Function<FrameSheet, OptionalInt> size) {
        OptionalInt pixels = source.map(s -> size.apply(s.optics())).orElseGet(OptionalInt::empty);
        if (pixels.isEmpty()) {
            return Fact.missing("no frame or stack to take the size from");
        }
        if (!(figures.get(Figure.IMAGE_SCALE) instanceof Fact.Known<Quantity> scale)) {
            return Fact.missing("the image scale is not known");
        }
        FrameSheet file = source.orElseThrow().optics();
        Input across = new Input(side, pixels.getAsInt() + " px", new Measured(file.name(), "field"));
        double degrees =
                TangentField.degrees(pixels.getAsInt(), scale.reading().value().value());
        return known(derived(
                degrees, Unit.DEGREE, "2 atan(N tan(scale) / 2)", "field", across, input("scale", scale.reading())));
    }
}
