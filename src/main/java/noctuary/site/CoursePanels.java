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
import noctuary.measure.NightCourse;

/** Panels of what only several frames together can tell: transparency, and how the field wandered. */
final class CoursePanels {
    private CoursePanels() {}

    static List<Panel> of(List<NightCourse> courses, ZoneId clock) {
        List<CourseFrame> frames = FieldDrift.compared(courses);
        if (frames.isEmpty()) {
            return List.of();
        }
        FieldDrift drift = FieldDrift.of(frames);
        return List.of(
                panel("Relative transparency", "", frames, clock, CourseFrame::relativeTransparency),
                panel("Drift along x", drift.unit(), frames, clock, drift::x),
                panel("Drift along y", drift.unit(), frames, clock, drift::y));
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
