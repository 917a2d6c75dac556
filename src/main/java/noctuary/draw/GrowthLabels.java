package noctuary.draw;

import java.util.List;

/** Words at the steps of an {@link ExposureGrowth}, where there is room; the rest is left to the pointer. */
final class GrowthLabels {
    private static final double LINE = 17;
    private static final int HIGHEST = 6;

    private final Form form;
    private final Box box;
    private final Spots spots = new Spots();

    GrowthLabels(Form form, Box box) {
        this.form = form;
        this.box = box;
    }

    /** Keeps words off the points and the lines of the steps. */
    void keepOff(List<ExposureGrowth.Attempt> attempts, Scale x, Scale y) {
        double sum = 0;
        double before = box.left();
        for (ExposureGrowth.Attempt attempt : attempts) {
            double at = x.at(attempt.date().toEpochDay());
            spots.take(new Spots.Area(before, y.at(sum), at, y.at(sum)));
            sum += attempt.hours();
            spots.take(new Spots.Area(at - 5, y.at(sum) - 3, at + 5, y.at(sum - attempt.hours())));
            before = at;
        }
        spots.take(new Spots.Area(before, y.at(sum), box.right(), y.at(sum)));
    }

    void goal(Svg svg, String text, double baseline) {
        svg.text("label halo", Anchor.START, box.left() + 6, baseline, text);
        spots.take(area(Anchor.START, box.left() + 6, baseline, text));
    }

    /** Left of the step, else below it, else higher up with a hairline down to it. */
    void attempt(Svg svg, ExposureGrowth.Attempt attempt, double x, double y) {
        String text = Words.within(attempt.label(), box.width() * 0.5, form.fontSize()) + " +"
                + Digits.hours(attempt.hours());
        if (!write(svg, text, Anchor.END, x - 10, y) && !write(svg, text, Anchor.START, x + 10, y + LINE)) {
            raised(svg, text, x, y);
        }
    }

    private void raised(Svg svg, String text, double x, double y) {
        double left = Math.max(box.left() + 6, x - Words.width(text, form.fontSize()));
        for (int row = 1; row <= HIGHEST; row++) {
            double baseline = y - 4 - row * LINE;
            if (baseline > box.top() + 10 && write(svg, text, Anchor.START, left, baseline)) {
                svg.line("leader", x, y - 6, x, baseline + 4);
                return;
            }
        }
    }

    private boolean write(Svg svg, String text, Anchor anchor, double x, double y) {
        Spots.Area area = area(anchor, x, y, text);
        boolean inside = area.left() > box.left() && area.right() < form.width() && area.bottom() < box.bottom() - 2;
        if (!inside || !spots.isFree(area)) {
            return false;
        }
        spots.take(area);
        svg.text("label halo", anchor, x, y, text);
        return true;
    }

    private Spots.Area area(Anchor anchor, double x, double baseline, String text) {
        return Spots.Area.ofText(anchor, x, baseline, Words.width(text, form.fontSize()));
    }
}
