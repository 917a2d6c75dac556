package noctuary.site;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import noctuary.draw.NightCourse.Panel;
import noctuary.draw.NightCourse.Sample;
import noctuary.measure.CourseFrame;
import noctuary.measure.CourseFrame.FieldMove;
import noctuary.measure.NightCourse;

/** Panels of what only several frames together can tell: transparency, and how the field wandered. */
final class CoursePanels {
    private CoursePanels() {}

    static List<Panel> of(List<NightCourse> courses, ZoneId clock) {
        List<CourseFrame> frames =
                courses.stream().flatMap(c -> c.frames().stream()).toList();
        if (frames.size() < 2) {
            return List.of();
        }
        boolean scaled = frames.stream()
                .flatMap(f -> f.field().stream())
                .allMatch(move -> move.xArcsec().isPresent());
        String unit = scaled ? "arcsec" : "px";
        Function<FieldMove, OptionalDouble> x = scaled ? FieldMove::xArcsec : move -> OptionalDouble.of(move.xPx());
        Function<FieldMove, OptionalDouble> y = scaled ? FieldMove::yArcsec : move -> OptionalDouble.of(move.yPx());
        return List.of(
                panel("Relative transparency", "", frames, clock, CourseFrame::relativeTransparency),
                panel("Drift along x", unit, frames, clock, f -> drift(f, x)),
                panel("Drift along y", unit, frames, clock, f -> drift(f, y)));
    }

    private static OptionalDouble drift(CourseFrame frame, Function<FieldMove, OptionalDouble> part) {
        return frame.field().map(part).orElseGet(OptionalDouble::empty);
    }

    private static Panel panel(
            String name,
            String unit,
            List<CourseFrame> frames,
            ZoneId clock,
            Function<CourseFrame, OptionalDouble> value) {
        List<Sample> samples = new ArrayList<>();
        frames.forEach(frame -> value.apply(frame)
                .ifPresent(v -> samples.add(new Sample(LocalDateTime.ofInstant(frame.taken(), clock), v))));
        return new Panel(name, unit, samples);
    }
}
