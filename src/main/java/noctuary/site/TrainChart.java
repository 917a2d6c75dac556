package noctuary.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.draw.TrainDrawing;
import noctuary.draw.TrainDrawing.Mate;
import noctuary.entry.RigNote;
import noctuary.entry.Typed;
import noctuary.fact.Quantity;
import noctuary.measure.RigSheet;
import noctuary.rig.Check;
import noctuary.rig.RigSpec;
import noctuary.site.page.Drawing;

/** The train of a rig as drawn, with what the checks say of its joints. */
final class TrainChart {
    private final RigSheet.State state;

    TrainChart(RigSheet.State state) {
        this.state = state;
    }

    /** Null without a train. */
    Drawing drawing() {
        if (state.train().isEmpty()) {
            return null;
        }
        TrainDrawing train = new TrainDrawing(
                "The train, to scale",
                state.train().stream().map(TrainChart::part).toList(),
                joints(),
                state.figures().backFocusRequiredMm().orElse(Double.NaN),
                state.figures().backFocusActualMm().orElse(Double.NaN),
                Double.NaN,
                state.figures().sensorDiagonalMm().orElse(Double.NaN));
        return Charts.drawing(
                train, "train-drawing", "From the corrector to the sensor, to scale; light comes from the left.");
    }

    private static TrainDrawing.Part part(RigNote.Part part) {
        double diameter = Stream.of(part.front(), part.rear())
                .flatMap(Optional::stream)
                .mapToDouble(joint -> RigSpec.Joint.parse(joint.value()).diameterMm())
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
        return new TrainDrawing.Part(
                part.name(), millimetres(part.length(), Double.NaN), millimetres(part.glass(), 0), diameter);
    }

    private static double millimetres(Optional<Typed<Quantity>> quantity, double absent) {
        return quantity.map(typed -> typed.value().value()).orElse(absent);
    }

    /** Parts without joints, such as a filter, sit inside their neighbour and are passed over. */
    private List<TrainDrawing.Joint> joints() {
        List<TrainDrawing.Joint> joints = new ArrayList<>();
        int before = -1;
        for (int i = 0; i < state.train().size(); i++) {
            RigNote.Part part = state.train().get(i);
            if (part.front().isEmpty() && part.rear().isEmpty() && part.length().isEmpty()) {
                continue;
            }
            if (before >= 0) {
                joint(before, state.train().get(before), part).ifPresent(joints::add);
            }
            before = i;
        }
        return joints;
    }

    private Optional<TrainDrawing.Joint> joint(int after, RigNote.Part a, RigNote.Part b) {
        List<String> sides = Stream.of(a.rear(), b.front())
                .flatMap(Optional::stream)
                .map(side -> side.value().replaceFirst("\\s+(fe)?male$", ""))
                .distinct()
                .toList();
        return sides.isEmpty()
                ? Optional.empty()
                : Optional.of(new TrainDrawing.Joint(after, String.join(" on ", sides), mate(a, b)));
    }

    private Mate mate(RigNote.Part a, RigNote.Part b) {
        String id = "joint-" + id(a) + "-" + id(b);
        Optional<Check.Level> level = state.checks().stream()
                .filter(check -> check.id().equals(id))
                .map(Check::level)
                .findFirst();
        return level.map(l -> l == Check.Level.WRONG ? Mate.MISFIT : l == Check.Level.OK ? Mate.FITS : Mate.UNKNOWN)
                .orElse(Mate.UNKNOWN);
    }

    private static String id(RigNote.Part part) {
        return part.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }
}
