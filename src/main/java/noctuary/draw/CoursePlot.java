package noctuary.draw;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;

/** The drawing of a {@link NightCourse}. */
final class CoursePlot {
    private static final double BETWEEN = 38;

    private final NightCourse course;
    private final Form form;
    private final List<LocalDateTime> times;
    private final List<Gap> gaps;
    private final Scale x;
    private final Flags flags;
    private final double left;
    private final double right;
    private final double top;
    private final double panelHeight;

    CoursePlot(NightCourse course, Form form) {
        this.course = course;
        this.form = form;
        this.times = course.panels().stream()
                .flatMap(panel -> panel.samples().stream().map(NightCourse.Sample::time))
                .distinct()
                .sorted()
                .toList();
        this.gaps = Gap.in(times.stream().mapToDouble(ClockTicks::seconds).toArray());
        this.left = form.pick(52, 46);
        this.right = form.width() - 12;
        LocalDateTime first = times.isEmpty() ? LocalDateTime.MIN : times.get(0);
        LocalDateTime last = times.isEmpty() ? LocalDateTime.MIN : times.get(times.size() - 1);
        this.x = new Scale(ClockTicks.seconds(first), ClockTicks.seconds(last), left + 6, right - 6);
        this.flags = new Flags(form, left, right);
        course.events().stream()
                .filter(event -> !event.time().isBefore(first) && !event.time().isAfter(last))
                .forEach(event -> flags.add(
                        x.at(ClockTicks.seconds(event.time())), event.label(), ClockTicks.clock(event.time())));
        this.top = flags.height() + BETWEEN - 6;
        this.panelHeight = form.pick(66, 58);
    }

    String draw(Alternative words) {
        int count = Math.max(course.panels().size(), 1);
        double bottom = top + count * (panelHeight + BETWEEN) - BETWEEN;
        Svg svg = Svg.picture(words, "course", form, bottom + 58);
        svg.open("defs");
        Texture.HATCH.define(svg, svg.idOf("gap"), "soft");
        svg.close();
        if (times.isEmpty()) {
            Axes.nothing(svg, form, top + panelHeight / 2, "no frames measured");
            return svg.end();
        }
        gaps.forEach(gap -> gap(svg, gap, bottom));
        Box all = new Box(left, top, right, bottom);
        int most = (int) form.pick(10, 6);
        Axes.times(svg, all, x, ClockTicks.between(times.get(0), times.get(times.size() - 1), most));
        for (int i = 0; i < course.panels().size(); i++) {
            double from = top + i * (panelHeight + BETWEEN);
            panel(svg, course.panels().get(i), new Box(left, from, right, from + panelHeight));
        }
        flags.draw(svg, 0, bottom);
        svg.text("note", Anchor.END, right, bottom + 52, course.clock());
        return svg.end();
    }

    private void gap(Svg svg, Gap gap, double bottom) {
        double from = x.at(gap.from()) + 5;
        double width = x.at(gap.to()) - 5 - from;
        if (width < 2) {
            return;
        }
        String words = Digits.hours((gap.to() - gap.from()) / 3600) + " gap";
        svg.open("g", "class", "point");
        svg.tip(words);
        svg.patterned("gap", "gap", from, top, width, bottom - top);
        if (width > Words.width(words, form.fontSize())) {
            svg.text("note", Anchor.MIDDLE, from + width / 2, top - 6, words);
        }
        svg.close();
    }

    private void panel(Svg svg, NightCourse.Panel panel, Box box) {
        double[] values =
                panel.samples().stream().mapToDouble(NightCourse.Sample::value).toArray();
        double low = Arrays.stream(values).min().orElseThrow();
        double high = Arrays.stream(values).max().orElseThrow();
        Ticks ticks = Ticks.around(low, high, 4);
        Scale y = new Scale(ticks.low(), ticks.high(), box.bottom(), box.top());
        Axes.name(svg, 4, box.top() - 13, panel.name(), panel.unit());
        Axes.levels(svg, box, y, ticks);
        Trace trace = new Trace();
        double before = Double.NaN;
        for (NightCourse.Sample sample : panel.samples()) {
            double at = ClockTicks.seconds(sample.time());
            if (joined(before, at)) {
                trace.line(x.at(at), y.at(sample.value()));
            } else {
                trace.move(x.at(at), y.at(sample.value()));
            }
            before = at;
        }
        svg.path("s1 course", trace);
        panel.samples().forEach(sample -> dot(svg, panel, sample, y));
    }

    private boolean joined(double before, double at) {
        return !Double.isNaN(before) && gaps.stream().noneMatch(gap -> gap.parts(before, at));
    }

    private void dot(Svg svg, NightCourse.Panel panel, NightCourse.Sample sample, Scale y) {
        svg.open("g", "class", "point");
        svg.tip(ClockTicks.clock(sample.time()) + ", " + panel.name() + " " + Digits.significant(sample.value(), 3)
                + (panel.unit().isEmpty() ? "" : " " + panel.unit()));
        svg.circle("s1 solid", x.at(ClockTicks.seconds(sample.time())), y.at(sample.value()), 2.6);
        svg.close();
    }
}
