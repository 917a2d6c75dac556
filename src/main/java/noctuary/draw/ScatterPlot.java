package noctuary.draw;

import java.util.List;
import java.util.Map;

/** The drawing of a {@link StrengthPlot}. */
final class ScatterPlot {
    private static final double HEADING = 24;
    private static final double RADIUS = 5;

    private final StrengthPlot plot;
    private final Map<String, Look> looks;
    private final Form form;
    private final Key key;
    private final Ticks across;
    private final Ticks up;
    private final Box box;
    private final Scale x;
    private final Scale y;

    ScatterPlot(StrengthPlot plot, Map<String, Look> looks, Form form) {
        this.plot = plot;
        this.looks = looks;
        this.form = form;
        this.key = new Key(
                looks.entrySet().stream()
                        .map(e -> new Key.Item(
                                e.getKey(), (svg, at, level) -> e.getValue().point(svg, at, level, RADIUS)))
                        .toList(),
                form);
        this.across =
                ticks(plot.points().stream().mapToDouble(StrengthPlot.Point::x).toArray(), 7);
        this.up =
                ticks(plot.points().stream().mapToDouble(StrengthPlot.Point::y).toArray(), 7);
        double top = HEADING + 10;
        this.box = new Box(Axes.left(form, up), top, form.width() - 24, top + form.pick(220, 190));
        this.x = new Scale(across.low(), across.high(), box.left() + 10, box.right());
        this.y = new Scale(up.low(), up.high(), box.bottom(), box.top());
    }

    /** Zero stands in every axis. */
    private static Ticks ticks(double[] values, int most) {
        double low = 0;
        double high = 0;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return low < 0 ? Ticks.around(low, high, most) : Ticks.fromZero(high, most);
    }

    String draw(Alternative words) {
        double height = box.bottom() + 50 + key.height();
        Svg svg = Svg.linked(words, "strength", form, height);
        svg.text("name", Anchor.START, 4, 14, plot.up());
        if (plot.points().isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "nothing measured yet");
            return svg.end();
        }
        Axes.levels(svg, box, y, up);
        List<TimeTick> marks = across.values().stream()
                .map(value -> new TimeTick(value, across.label(value), ""))
                .toList();
        Axes.times(svg, form, box, x, marks);
        svg.text("name", Anchor.END, box.right(), box.bottom() + 36, plot.across());
        plot.points().forEach(point -> point(svg, point));
        key.draw(svg, 4, box.bottom() + 44);
        return svg.end();
    }

    private void point(Svg svg, StrengthPlot.Point point) {
        svg.openLink(point.href(), "point");
        svg.tip(point.label() + ", " + point.series() + ": " + Digits.significant(point.y(), 2) + " at "
                + Digits.significant(point.x(), 3));
        looks.get(point.series()).point(svg, x.at(point.x()), y.at(point.y()), RADIUS);
        svg.close();
    }
}
