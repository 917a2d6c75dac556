package noctuary.draw;

import java.time.LocalDateTime;
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
    private final List<CoursePanel> panels;
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
        this.panels = course.panels().stream().map(CoursePanel::new).toList();
        this.left = panels.stream()
                .mapToDouble(panel -> Axes.left(form, panel.ticks()))
                .reduce(form.pick(52, 46), Math::max);
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
        int count = Math.max(panels.size(), 1);
        double bottom = top + count * (panelHeight + BETWEEN) - BETWEEN;
        Svg svg = Svg.picture(words, "course", form, bottom + 58);
        svg.open("defs");
        Texture.HATCH.define(svg, svg.idOf("gap"), "soft");
        Dot.define(svg, CoursePanel.DOT, "s1");
        svg.close();
        if (times.isEmpty()) {
            Axes.nothing(svg, form, top + panelHeight / 2, "no frames measured");
            return svg.end();
        }
        gaps.forEach(gap -> gap(svg, gap, bottom));
        Box all = new Box(left, top, right, bottom);
        int most = (int) form.pick(10, 6);
        Axes.times(svg, form, all, x, ClockTicks.between(times.get(0), times.get(times.size() - 1), most));
        for (int i = 0; i < panels.size(); i++) {
            double from = top + i * (panelHeight + BETWEEN);
            panels.get(i).draw(svg, new Box(left, from, right, from + panelHeight), x, gaps);
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
}
