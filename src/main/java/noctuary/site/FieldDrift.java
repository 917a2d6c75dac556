package noctuary.site;

import java.util.List;
import java.util.OptionalDouble;
import noctuary.measure.CourseFrame;
import noctuary.measure.CourseFrame.FieldMove;
import noctuary.measure.NightCourse;

/** How the field wandered from frame to frame: on the sky where every frame tells its scale, else on the sensor. */
record FieldDrift(boolean scaled) {
    static FieldDrift of(List<CourseFrame> frames) {
        return new FieldDrift(frames.stream()
                .flatMap(frame -> frame.field().stream())
                .allMatch(move -> move.xArcsec().isPresent()));
    }

    /** Frames that were compared with each other; none where there is nothing to compare. */
    static List<CourseFrame> compared(List<NightCourse> courses) {
        List<CourseFrame> frames =
                courses.stream().flatMap(course -> course.frames().stream()).toList();
        return frames.size() < 2 ? List.of() : frames;
    }

    String unit() {
        return scaled ? "arcsec" : "px";
    }

    OptionalDouble x(CourseFrame frame) {
        return frame.field().map(this::x).orElseGet(OptionalDouble::empty);
    }

    OptionalDouble y(CourseFrame frame) {
        return frame.field().map(this::y).orElseGet(OptionalDouble::empty);
    }

    private OptionalDouble x(FieldMove move) {
        return scaled ? move.xArcsec() : OptionalDouble.of(move.xPx());
    }

    private OptionalDouble y(FieldMove move) {
        return scaled ? move.yArcsec() : OptionalDouble.of(move.yPx());
    }
}
