package noctuary.draw;

import java.util.Locale;
import java.util.stream.DoubleStream;

/** The drawing of an {@link IntervalPlot}. */
final class CaterpillarPlot {
    private static final double TOP = 22;

    private final IntervalPlot plot;
    private final Form form;
    private final double rowHeight;
    private final Box box;
    private final Ticks ticks;
    private final Scale x;

    CaterpillarPlot(IntervalPlot plot, Form form) {
        this.plot = plot;
        this.form = form;
        this.rowHeight = form.pick(34, 62);
        double bottom = TOP + Math.max(1, plot.rows().size()) * rowHeight + 6;
        this.box = new Box(form.pick(190, 12), TOP, form.width() - form.pick(220, 12), bottom);
        double low = Math.min(0, values().min().orElse(-1));
        double high = Math.max(0, values().max().orElse(1));
        this.ticks = Ticks.around(low, high, (int) form.pick(7, 6));
        this.x = new Scale(ticks.low(), ticks.high(), box.left(), box.right());
    }

    private DoubleStream values() {
        return plot.rows().stream()
                .flatMapToDouble(row -> DoubleStream.of(row.shift(), row.low(), row.high()))
                .filter(Double::isFinite);
    }

    String draw(Alternative words) {
        Svg svg = Svg.picture(words, "intervals", form, box.bottom() + 44);
        if (plot.rows().isEmpty()) {
            Axes.nothing(svg, form, TOP + rowHeight / 2, "nothing to compare");
            return svg.end();
        }
        for (double tick : ticks.values()) {
            svg.line(tick == 0 ? "zero" : "hair", x.at(tick), box.top() - 4, x.at(tick), box.bottom());
            Axes.under(svg, form, x.at(tick), box.bottom() + 17, signed(tick));
        }
        svg.text("note", Anchor.MIDDLE, (box.left() + box.right()) / 2, box.bottom() + 36, plot.scale());
        if (!plot.below().isEmpty() && x.at(0) - box.left() > 30) {
            svg.text("note", Anchor.END, x.at(0) - 8, 12, "← " + plot.below());
        }
        if (!plot.above().isEmpty() && box.right() - x.at(0) > 30) {
            svg.text("note", Anchor.START, x.at(0) + 8, 12, plot.above() + " →");
        }
        for (int i = 0; i < plot.rows().size(); i++) {
            row(svg, plot.rows().get(i), TOP + i * rowHeight);
        }
        return svg.end();
    }

    private String signed(double tick) {
        return Digits.signed(tick, ticks.decimals());
    }

    private void row(Svg svg, IntervalPlot.Row row, double top) {
        double y = top + form.pick(16, 48);
        String words = IntervalPlot.numbers(row);
        svg.open("g", "class", "point");
        svg.tip(row.label() + ": " + words + (words.isEmpty() ? "" : ", ") + row.note());
        if (form == Form.WIDE) {
            svg.text("label", Anchor.START, 4, y + 5, Words.within(row.label(), box.left() - 20, form.fontSize()));
            svg.text("value", Anchor.START, box.right() + 14, y - 1, words);
            svg.text("note", Anchor.START, box.right() + 14, words.isEmpty() ? y + 5 : y + 13, row.note());
        } else {
            svg.text("label halo", Anchor.START, 4, top + 15, row.label());
            svg.text("value halo", Anchor.END, form.width() - 4, top + 15, words);
            svg.text("note halo", Anchor.START, 4, top + 32, row.note());
        }
        interval(svg, row, y);
        svg.close();
    }

    private void interval(Svg svg, IntervalPlot.Row row, double y) {
        String tone = row.tone().name().toLowerCase(Locale.ROOT);
        if (row.hasInterval()) {
            svg.line("interval " + tone, x.at(row.low()), y, x.at(row.high()), y);
            svg.line("interval " + tone, x.at(row.low()), y - 4, x.at(row.low()), y + 4);
            svg.line("interval " + tone, x.at(row.high()), y - 4, x.at(row.high()), y + 4);
        }
        if (row.hasShift()) {
            Symbol symbol = switch (row.tone()) {
                case BETTER -> Symbol.DOT;
                case WORSE -> Symbol.SQUARE;
                case OPEN -> Symbol.DIAMOND;
            };
            String fill = row.tone() == IntervalPlot.Tone.OPEN ? " hollow" : " solid";
            symbol.draw(svg, tone + fill, x.at(row.shift()), y, 5);
        }
    }
}
