package noctuary.draw;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * One measure of a {@link NightCourse} on its own scale: dots, joined except across gaps. A night has hundreds of them,
 * so they are one element; their numbers belong into a table.
 */
final class CoursePanel {
    /** The dot that all panels of a drawing share. */
    static final String DOT = "dot";

    private final NightCourse.Panel panel;
    private final Ticks ticks;

    CoursePanel(NightCourse.Panel panel) {
        this.panel = panel;
        this.ticks = Ticks.around(values().min().orElseThrow(), values().max().orElseThrow(), 4);
    }

    private DoubleStream values() {
        return panel.samples().stream().mapToDouble(NightCourse.Sample::value);
    }

    Ticks ticks() {
        return ticks;
    }

    void draw(Svg svg, Box box, Scale x, List<Gap> gaps) {
        Scale y = new Scale(ticks.low(), ticks.high(), box.bottom(), box.top());
        Axes.name(svg, 4, box.top() - 13, panel.name(), panel.unit());
        Axes.levels(svg, box, y, ticks);
        Trace trace = new Trace();
        double before = Double.NaN;
        for (NightCourse.Sample sample : panel.samples()) {
            double at = ClockTicks.seconds(sample.time());
            if (joined(gaps, before, at)) {
                trace.line(x.at(at), y.at(sample.value()));
            } else {
                trace.move(x.at(at), y.at(sample.value()));
            }
            before = at;
        }
        Dot.along(svg, DOT, "s1 course", trace);
    }

    private static boolean joined(List<Gap> gaps, double before, double at) {
        return !Double.isNaN(before) && gaps.stream().noneMatch(gap -> gap.parts(before, at));
    }
}
