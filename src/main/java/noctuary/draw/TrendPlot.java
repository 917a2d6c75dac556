package noctuary.draw;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The drawing of a {@link Trend}. */
final class TrendPlot {
    private static final double RIBBON = 34;
    private static final double HEADING = 26;

    private final Trend trend;
    private final List<SeriesUse> uses;
    private final Form form;
    private final LocalDate from;
    private final LocalDate to;
    private final Flags flags;
    private final Box box;
    private final Scale x;
    private final Ticks ticks;
    private final Scale y;

    TrendPlot(Trend trend, List<SeriesUse> uses, Form form) {
        this.trend = trend;
        this.uses = uses;
        this.form = form;
        List<LocalDate> dates = Stream.concat(
                        trend.points().stream().map(Trend.Point::date),
                        trend.changes().stream().map(Trend.Change::date))
                .sorted()
                .toList();
        LocalDate first = dates.isEmpty() ? LocalDate.EPOCH : dates.get(0);
        LocalDate last = dates.isEmpty() ? LocalDate.EPOCH : dates.get(dates.size() - 1);
        long margin = Math.max(4, (last.toEpochDay() - first.toEpochDay()) / 40);
        this.from = first.minusDays(margin);
        this.to = last.plusDays(margin);
        this.ticks = ticks();
        double left = Axes.left(form, ticks);
        double right = form.width() - 10;
        this.x = new Scale(from.toEpochDay(), to.toEpochDay(), left, right);
        this.flags = new Flags(form, left, right);
        trend.changes().forEach(c -> flags.add(x.at(c.date().toEpochDay()), c.label(), DateTicks.day(c.date())));
        double top = HEADING + flags.height();
        this.box = new Box(left, top, right, top + form.pick(210, 180));
        this.y = new Scale(ticks.low(), ticks.high(), box.bottom(), box.top());
    }

    /** From zero, unless that would leave more than half of the plot empty. */
    private Ticks ticks() {
        double low = values().min().orElse(0);
        double high = values().max().orElse(1);
        return low >= 0 && low <= high / 2 || high <= 0 ? Ticks.fromZero(high, 6) : Ticks.around(low, high, 6);
    }

    private DoubleStream values() {
        return trend.points().stream()
                .flatMapToDouble(p ->
                        p.hasSpread() ? DoubleStream.of(p.low(), p.value(), p.high()) : DoubleStream.of(p.value()));
    }

    String draw(Alternative words) {
        double height = box.bottom() + 46 + RIBBON * uses.size();
        Svg svg = Svg.linked(words, "trend", form, height);
        Axes.name(svg, 4, 14, trend.measure(), trend.unit());
        if (trend.points().isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "nothing measured yet");
            return svg.end();
        }
        Axes.levels(svg, box, y, ticks);
        if (ticks.low() > 0) {
            Axes.broken(svg, box, ticks.label(ticks.low()));
        }
        Axes.times(svg, form, box, x, DateTicks.between(from, to, (int) form.pick(13, 7)));
        flags.draw(svg, HEADING, box.bottom());
        uses.forEach(use -> median(svg, use));
        trend.points().forEach(point -> point(svg, point));
        for (int i = 0; i < uses.size(); i++) {
            ribbon(svg, uses.get(i), box.bottom() + 68 + RIBBON * i);
        }
        return svg.end();
    }

    private void median(Svg svg, SeriesUse use) {
        String classes = "median " + use.look().colour() + " " + use.look().dash();
        double at = y.at(use.median());
        svg.line(
                classes, x.at(use.first().toEpochDay()) - 6, at, x.at(use.last().toEpochDay()) + 6, at);
    }

    private void point(Svg svg, Trend.Point point) {
        Look look = uses.stream()
                .filter(use -> use.name().equals(point.series()))
                .findFirst()
                .orElseThrow()
                .look();
        double at = x.at(point.date().toEpochDay());
        String spread = point.hasSpread()
                ? " (" + Digits.significant(point.low(), 3) + " to " + Digits.significant(point.high(), 3) + ")"
                : "";
        svg.openLink(point.href(), "point");
        svg.tip(point.label() + ", " + DateTicks.day(point.date()) + ", " + point.series() + ": "
                + trend.quantity(point.value()) + spread);
        if (point.hasSpread()) {
            svg.line("whisker " + look.colour(), at, y.at(point.low()), at, y.at(point.high()));
        }
        look.point(svg, at, y.at(point.value()), 4.6);
        svg.close();
    }

    /** The span of use as a line, the name and median above it. */
    private void ribbon(Svg svg, SeriesUse use, double at) {
        double start = x.at(use.first().toEpochDay());
        double end = x.at(use.last().toEpochDay());
        String text = use.name() + ", median " + Digits.significant(use.median(), 3) + " of " + use.count();
        text = Words.within(text, form.width() - 30, form.fontSize());
        double width = Words.width(text, form.fontSize());
        svg.line("ribbon " + use.look().colour() + " " + use.look().dash(), start, at, end, at);
        svg.line("ribbon " + use.look().colour(), end, at - 4, end, at + 4);
        use.look().point(svg, start, at, 4.6);
        double left = Math.max(4, Math.min(start - 4, form.width() - width - 6));
        svg.text("label", Anchor.START, left, at - 9, text);
    }
}
