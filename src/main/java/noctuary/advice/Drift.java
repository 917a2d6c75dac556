package noctuary.advice;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import noctuary.measure.CourseFrame;
import noctuary.measure.NightCourse;
import noctuary.measure.Observation;
import noctuary.stats.Robust;

/**
 * Stars that widened steadily through a night, as the night's course has found them to do.
 *
 * @param middleOverStart median width over that of the first frames (a quarter of them), airmass taken out where it is
 *     known
 * @param endOverStart the same of the last quarter
 */
record Drift(double middleOverStart, double endOverStart, String evidence) {
    /** Widths grow with this power of the airmass: Kolmogorov turbulence, Roddier 1981. */
    static final double SEEING_POWER = 0.6;

    private static final String RULE = "focus-drift";

    /** Whether any course has frames enough to have been judged. */
    static boolean judged(List<NightCourse> courses) {
        return courses.stream().anyMatch(course -> widths(course).size() >= 4);
    }

    /** The strongest over the nights; absent where none was found. */
    static Optional<Drift> of(List<NightCourse> courses) {
        return courses.stream()
                .flatMap(course -> of(course).stream())
                .max((a, b) -> Double.compare(a.endOverStart(), b.endOverStart()));
    }

    private static Optional<Drift> of(NightCourse course) {
        Optional<Observation> seen =
                course.observations().stream().filter(o -> o.id().equals(RULE)).findFirst();
        List<CourseFrame> frames = widths(course);
        if (seen.isEmpty() || frames.size() < 4) {
            return Optional.empty();
        }
        double[] widths = atZenith(frames);
        int few = Math.max(1, widths.length / 4);
        double start = Robust.median(Arrays.copyOf(widths, few));
        double end = Robust.median(Arrays.copyOfRange(widths, widths.length - few, widths.length));
        double middle = Math.max(start, Robust.median(widths));
        return end > start
                ? Optional.of(new Drift(middle / start, end / start, seen.get().evidence()))
                : Optional.empty();
    }

    static List<CourseFrame> widths(NightCourse course) {
        return course.frames().stream().filter(f -> f.fwhmPx().isPresent()).toList();
    }

    static double[] hours(List<CourseFrame> frames) {
        return frames.stream()
                .mapToDouble(
                        f -> Duration.between(frames.get(0).taken(), f.taken()).toMillis() / 3_600_000.0)
                .toArray();
    }

    /** Pixels, brought to airmass 1 where every frame's airmass is known. */
    static double[] atZenith(List<CourseFrame> frames) {
        boolean known = frames.stream().allMatch(f -> f.airmass().isPresent());
        return frames.stream()
                .mapToDouble(f ->
                        f.fwhmPx().getAsDouble() / (known ? Math.pow(f.airmass().getAsDouble(), SEEING_POWER) : 1))
                .toArray();
    }
}
