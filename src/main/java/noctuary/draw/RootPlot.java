package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** The drawing of a {@link NoiseByTime}. */
final class RootPlot {
    private static final double HEADING = 24;
    private static final double DOT = 4;
    /** Around the dot where both fall together. */
    private static final double AROUND = 7;

    private static final Look WHOLE = new Look(0);
    private static final Look FRESH = new Look(1);

    private final NoiseByTime plot;
    private final Form form;
    private final Key key;
    private final Ticks up;
    private final Box box;
    private final Scale x;
    private final Scale y;

    RootPlot(NoiseByTime plot, Form form) {
        this.plot = plot;
        this.form = form;
        this.key = new Key(
                List.of(
                        new Key.Item(NoiseByTime.WHOLE, (svg, at, level) -> WHOLE.point(svg, at, level, DOT)),
                        new Key.Item(NoiseByTime.FRESH, (svg, at, level) -> FRESH.point(svg, at, level, AROUND)),
                        new Key.Item(
                                NoiseByTime.ROOT,
                                (svg, at, level) -> svg.line("open course d2", at - 8, level, at + 8, level))),
                form);
        this.up = PowerTicks.around(values().min().orElse(1), values().max().orElse(1));
        this.box = new Box(Axes.left(form, up), HEADING + 10, form.width() - 24, HEADING + 10 + form.pick(200, 180));
        double[] times =
                plot.points().stream().mapToDouble(NoiseByTime.Point::seconds).toArray();
        double first = times.length == 0 ? 1 : times[0];
        double last = times.length == 0 ? 1 : times[times.length - 1];
        this.x = new Scale(Math.log(first), Math.log(last), box.left() + 24, box.right() - 24);
        this.y = new Scale(Math.log(up.low()), Math.log(up.high()), box.bottom(), box.top());
    }

    private DoubleStream values() {
        return plot.points().stream().flatMapToDouble(p -> DoubleStream.of(p.noise(), p.fresh(), plot.root(p)));
    }

    String draw(Alternative words) {
        Svg svg = Svg.picture(words, "strength", form, box.bottom() + 50 + key.height());
        svg.text("name", Anchor.START, 4, 14, plot.up());
        if (plot.points().isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "nothing measured yet");
            return svg.end();
        }
        levels(svg);
        Axes.times(svg, form, box, x, times());
        svg.text("name", Anchor.END, box.right(), box.bottom() + 36, "exposure");
        NoiseByTime.Point first = plot.points().get(0);
        NoiseByTime.Point last = plot.points().get(plot.points().size() - 1);
        svg.line("open course d2", across(first), level(plot.root(first)), across(last), level(plot.root(last)));
        plot.points().forEach(point -> point(svg, point));
        key.draw(svg, 4, box.bottom() + 44);
        return svg.end();
    }

    private void levels(Svg svg) {
        for (double value : up.values()) {
            double at = level(value);
            svg.line(value == up.low() ? "axis" : "hair", box.left(), at, box.right(), at);
            svg.text("tick", Anchor.END, box.left() - 6, at + 4.5, up.label(value));
        }
    }

    /** At the points themselves, but none over another. */
    private List<TimeTick> times() {
        List<TimeTick> ticks = new ArrayList<>();
        double free = 0;
        for (NoiseByTime.Point point : plot.points()) {
            double half = Words.width(point.time(), form.fontSize()) / 2;
            boolean fits = across(point) - half >= free;
            ticks.add(new TimeTick(Math.log(point.seconds()), fits ? point.time() : "", ""));
            free = fits ? across(point) + half + 8 : free;
        }
        return ticks;
    }

    private void point(Svg svg, NoiseByTime.Point point) {
        svg.open("g", "class", "point");
        svg.tip(point.time() + ": " + NoiseByTime.WHOLE + " " + Digits.significant(point.noise(), 3) + ", "
                + NoiseByTime.FRESH + " " + Digits.significant(point.fresh(), 3));
        FRESH.point(svg, across(point), level(point.fresh()), AROUND);
        WHOLE.point(svg, across(point), level(point.noise()), DOT);
        svg.close();
    }

    private double across(NoiseByTime.Point point) {
        return x.at(Math.log(point.seconds()));
    }

    private double level(double value) {
        return y.at(Math.log(value));
    }
}
