package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/** Upright lines through a plot where something happened, their labels above it in rows that do not touch. */
final class Flags {
    private static final double ROW = 17;

    private record Flag(double x, String text, Anchor anchor, String tip, int row) {}

    private final Form form;
    private final double left;
    private final double right;
    private final Rows rows = new Rows(10);
    private final List<Flag> flags = new ArrayList<>();

    Flags(Form form, double left, double right) {
        this.form = form;
        this.left = left;
        this.right = right;
    }

    void add(double x, String label, String when) {
        String text = Words.within(label, (right - left) * 0.8, form.fontSize());
        double width = Words.width(text, form.fontSize());
        Anchor anchor = x + 5 + width <= right ? Anchor.START : Anchor.END;
        if (anchor == Anchor.END && x - 5 - width < 0) {
            text = Words.within(label, Math.max(x, right - x) - 8, form.fontSize());
            width = Words.width(text, form.fontSize());
            anchor = x > (left + right) / 2 ? Anchor.END : Anchor.START;
        }
        double edge = anchor == Anchor.START ? x : x - 5 - width;
        flags.add(new Flag(x, text, anchor, when + ": " + label, rows.place(edge, edge + 5 + width)));
    }

    double height() {
        return rows.count() * ROW + (flags.isEmpty() ? 0 : 4);
    }

    void draw(Svg svg, double top, double bottom) {
        for (Flag flag : flags) {
            double y = top + (rows.count() - 1 - flag.row()) * ROW;
            svg.open("g", "class", "flag");
            svg.tip(flag.tip());
            svg.line("flagline", flag.x(), y, flag.x(), bottom);
            double side = flag.anchor() == Anchor.START ? 5 : -5;
            svg.text("label halo", flag.anchor(), flag.x() + side, y + 11, flag.text());
            svg.close();
        }
    }
}
