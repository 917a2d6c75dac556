package noctuary.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks every rule about one series. A cause that explains a symptom silences the rules that would explain it again. */
final class CourseRules {
    private CourseRules() {}

    /** @param oneOfSeveral whether the night has other series, so that the sentence must name the filter */
    static List<Observation> look(List<CourseFrame> frames, boolean oneOfSeveral) {
        CourseSeries series = new CourseSeries(frames);
        if (!series.enough()) {
            return List.of();
        }
        List<Observation> seen = new ArrayList<>();
        ObstructionRule.look(series).ifPresent(seen::add);
        CourseSeries whole = series.only(f -> f.dimmed().isEmpty());
        Optional<Observation> dew = DewRule.look(whole);
        dew.or(() -> CloudRule.look(whole)).ifPresent(seen::add);
        if (dew.isEmpty()) {
            FocusDriftRule.look(series).ifPresent(seen::add);
        }
        TrailingRule.look(series).ifPresent(seen::add);
        String filter = frames.get(0).filter();
        return oneOfSeveral && !filter.isEmpty()
                ? seen.stream().map(o -> named(o, filter)).toList()
                : seen;
    }

    private static Observation named(Observation seen, String filter) {
        return new Observation(seen.id(), "Filter " + filter + ": " + seen.text(), seen.evidence());
    }
}
