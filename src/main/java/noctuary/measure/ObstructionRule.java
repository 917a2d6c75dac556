package noctuary.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Frames in which stars are gone on one side of the field only. */
final class ObstructionRule {
    private static final List<String> SIDES = List.of(
            "right side", "upper right", "top", "upper left", "left side", "lower left", "bottom", "lower right");

    private ObstructionRule() {}

    static Optional<Observation> look(CourseSeries series) {
        List<Integer> shaded = series.where(i -> series.frames().get(i).dimmed().isPresent());
        if (shaded.isEmpty()) {
            return Optional.empty();
        }
        CourseFrame worst = shaded.stream()
                .map(series.frames()::get)
                .max(Comparator.comparing(f -> f.dimmed().orElseThrow().share()))
                .orElseThrow();
        DimmedSide side = worst.dimmed().orElseThrow();
        String text = "Stars are gone or dimmed on one side of the field (" + side(side.directionDeg())
                + ", as the picture is shown) in " + shaded.size() + " of " + series.size()
                + " frames: looks like a tree, a wall or another obstruction.";
        String evidence = "at " + CourseSeries.clock(worst) + ", " + side.lost() + " of " + side.all()
                + " bright stars of that half are gone or dimmed, " + side.lostOpposite() + " of "
                + side.allOpposite() + " of the other half; frames of " + series.clocks(shaded);
        return Optional.of(new Observation("obstruction", text, evidence));
    }

    private static String side(double directionDeg) {
        return SIDES.get((int) Math.round(directionDeg / 45) % 8);
    }
}
