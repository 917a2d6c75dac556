package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/** Words above or below a train, each tied to its place by a hairline, in rows that do not touch. */
final class TrainLabels {
    private static final double ROW = 18;

    private record Label(double at, double middle, String text, String classes, int row) {}

    private final Form form;
    private final Rows rows = new Rows(12);
    private final List<Label> labels = new ArrayList<>();

    TrainLabels(Form form) {
        this.form = form;
    }

    void add(double at, String words, String classes) {
        String text = Words.within(words, form.width() - 12, form.fontSize());
        double half = Words.width(text, form.fontSize()) / 2;
        double middle = Math.max(half + 4, Math.min(at, form.width() - half - 4));
        labels.add(new Label(at, middle, text, classes, rows.place(middle - half, middle + half)));
    }

    double height() {
        return rows.count() * ROW + 4;
    }

    /** @param edge where the drawing ends, from which the rows go up or down */
    void draw(Svg svg, double edge, boolean down) {
        for (Label label : labels) {
            double reach = 8 + label.row() * ROW;
            svg.line("leader", label.at(), edge, label.at(), down ? edge + reach : edge - reach);
        }
        for (Label label : labels) {
            double reach = 8 + label.row() * ROW;
            double y = down ? edge + reach + 13 : edge - reach - 4;
            svg.text(label.classes() + " halo", Anchor.MIDDLE, label.middle(), y, label.text());
        }
    }
}
