package noctuary.measure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import noctuary.fact.Printed;
import noctuary.stats.Robust;

/** Frames whose stars are drawn out along one direction, more than in the rounder frames of the night. */
final class TrailingRule {
    private static final double LEAST = 0.08;
    private static final double LEAST_ERRORS = 5;

    private TrailingRule() {}

    static Optional<Observation> look(CourseSeries all) {
        CourseSeries series = all.only(f -> f.elongation().isPresent());
        if (!series.enough()) {
            return Optional.empty();
        }
        double[] sorted = series.values(f -> f.elongation().orElseThrow().ellipticity());
        Arrays.sort(sorted);
        double usual = Robust.median(Arrays.copyOf(sorted, (sorted.length + 1) / 2));
        List<Integer> drawn = series.where(i -> {
            Elongation e = series.frames().get(i).elongation().orElseThrow();
            return e.ellipticity() - usual > Math.max(LEAST, LEAST_ERRORS * e.standardError());
        });
        return drawn.isEmpty() ? Optional.empty() : Optional.of(observation(series, usual, drawn));
    }

    private static Observation observation(CourseSeries series, double usual, List<Integer> drawn) {
        CourseFrame worst = drawn.stream()
                .map(series.frames()::get)
                .max(Comparator.comparing(f -> f.elongation().orElseThrow().ellipticity()))
                .orElseThrow();
        Elongation e = worst.elongation().orElseThrow();
        String text = "Stars are drawn out along one direction in " + drawn.size() + " of " + series.size()
                + " frames: looks like trailing, from tracking, guiding or wind.";
        String evidence = "at " + CourseSeries.clock(worst) + " the common ellipticity is "
                + Printed.withError(e.ellipticity(), e.standardError()) + " at "
                + Math.round(e.angleDeg()) + "° from +x towards +y, " + Printed.number(usual)
                + " in the rounder half of the frames; frames of " + series.clocks(drawn);
        return new Observation("trailing", text, evidence);
    }
}
