package noctuary.draw;

import java.util.List;

/** Thin axes with few labels; a name stands where the axis begins, never turned on its side. */
final class Axes {
    private Axes() {}

    /** Hairlines across at every tick, labels left of them. */
    static void levels(Svg svg, Box box, Scale y, Ticks ticks) {
        for (double value : ticks.values()) {
            double at = y.at(value);
            svg.line(value == ticks.low() ? "axis" : "hair", box.left(), at, box.right(), at);
            svg.text("tick", Anchor.END, box.left() - 6, at + 4.5, ticks.label(value));
        }
    }

    /** What the vertical axis counts, above it. */
    static void name(Svg svg, double x, double y, String name, String unit) {
        svg.text("name", Anchor.START, x, y, unit.isEmpty() ? name : name + ", " + unit);
    }

    /** Where a plot begins so that the labels of its levels find room. */
    static double left(Form form, Ticks ticks) {
        return Math.max(form.pick(44, 36), ticks.width(form.fontSize()) + 10);
    }

    /** A label centred under its tick, moved inward where it would leave the drawing. */
    static void under(Svg svg, Form form, double at, double y, String text) {
        double half = Words.width(text, form.fontSize()) / 2;
        svg.text("tick", Anchor.MIDDLE, Math.max(half, Math.min(at, form.width() - half)), y, text);
    }

    /** Short strokes below the plot with one or two lines of text under each. */
    static void times(Svg svg, Form form, Box box, Scale x, List<TimeTick> ticks) {
        for (TimeTick tick : ticks) {
            double at = x.at(tick.at());
            svg.line("axis", at, box.bottom(), at, box.bottom() + 5);
            under(svg, form, at, box.bottom() + 18, tick.label());
            if (!tick.under().isEmpty()) {
                under(svg, form, at, box.bottom() + 33, tick.under());
            }
        }
    }

    /** Two short slanted strokes through an axis that does not begin at zero, and the words that say so. */
    static void broken(Svg svg, Box box, String low) {
        double x = box.left();
        double y = box.bottom() - 7;
        svg.path("axis", new Trace().move(x - 4, y + 2).line(x + 4, y - 2));
        svg.path("axis", new Trace().move(x - 4, y + 6).line(x + 4, y + 2));
        svg.text("note", Anchor.START, x + 8, box.bottom() - 5, "scale begins at " + low);
    }

    /** In place of a plot that has nothing to show. */
    static void nothing(Svg svg, Form form, double y, String why) {
        svg.text("note", Anchor.MIDDLE, form.width() / 2, y, why);
    }
}
