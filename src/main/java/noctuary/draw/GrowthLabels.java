package noctuary.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words at the steps of an {@link ExposureGrowth}, where there is room; the rest is left to the pointer. */
final class GrowthLabels {
    private static final double LINE = 17;
    private static final int HIGHEST = 9;

    /** @param leader from the point up to words that had to be raised */
    record Label(String text, Anchor anchor, double x, double baseline, boolean leader) {}

    private final Form form;
    private final Box box;
    private final Scale x;
    private final Scale y;
    private final Spots spots = new Spots();

    GrowthLabels(Form form, Box box, Scale x, Scale y) {
        this.form = form;
        this.box = box;
        this.x = x;
        this.y = y;
    }

    void goal(Svg svg, String text, double baseline) {
        svg.text("label halo", Anchor.START, box.left() + 6, baseline, text);
        spots.take(Spots.Area.ofText(Anchor.START, box.left() + 6, baseline, width(text)));
    }

    /** A label for each attempt, in their order. The last is placed first: the room is above and left of the steps. */
    List<Optional<Label>> place(List<ExposureGrowth.Attempt> attempts) {
        double[] tops = keepOff(attempts);
        List<Optional<Label>> labels = new ArrayList<>();
        for (int i = attempts.size() - 1; i >= 0; i--) {
            labels.add(0, place(attempts.get(i), tops[i]));
        }
        return labels;
    }

    /** Keeps words off the points and the lines; the heights of the steps. */
    private double[] keepOff(List<ExposureGrowth.Attempt> attempts) {
        double[] tops = new double[attempts.size()];
        double sum = 0;
        double before = box.left();
        for (int i = 0; i < tops.length; i++) {
            double at = x.at(attempts.get(i).date().toEpochDay());
            double foot = y.at(sum);
            sum += attempts.get(i).hours();
            tops[i] = y.at(sum);
            spots.take(new Spots.Area(before, foot, at, foot));
            spots.take(new Spots.Area(at - 5, tops[i] - 3, at + 5, foot));
            before = at;
        }
        return tops;
    }

    /** Left of the step, else below it, else higher up with a hairline down to it. */
    private Optional<Label> place(ExposureGrowth.Attempt attempt, double atY) {
        double atX = x.at(attempt.date().toEpochDay());
        String text = Words.within(attempt.label(), box.width() * 0.5, form.fontSize()) + " +"
                + Digits.hours(attempt.hours());
        List<Label> places = new ArrayList<>();
        places.add(new Label(text, Anchor.END, atX - 10, atY, false));
        places.add(new Label(text, Anchor.START, atX + 10, atY + LINE, false));
        places.add(new Label(text, Anchor.START, atX + 10, atY + 2 * LINE, false));
        for (int row = 1; row <= HIGHEST; row++) {
            double baseline = atY - 4 - row * LINE;
            places.add(new Label(text, Anchor.START, Math.max(box.left() + 6, atX - width(text)), baseline, true));
            places.add(new Label(text, Anchor.START, atX - 4, baseline, true));
        }
        Optional<Label> free =
                places.stream().filter(label -> fits(label, atX, atY)).findFirst();
        free.ifPresent(label -> take(label, atX, atY));
        return free;
    }

    private boolean fits(Label label, double atX, double atY) {
        Spots.Area words = area(label);
        boolean inside = words.left() > box.left()
                && words.right() < form.width()
                && words.top() > box.top()
                && words.bottom() < box.bottom() - 2;
        return inside && spots.isFree(words) && (!label.leader() || spots.isFree(leader(label, atX, atY)));
    }

    private void take(Label label, double atX, double atY) {
        spots.take(area(label));
        if (label.leader()) {
            spots.take(leader(label, atX, atY));
        }
    }

    private Spots.Area area(Label label) {
        return Spots.Area.ofText(label.anchor(), label.x(), label.baseline(), width(label.text()));
    }

    private static Spots.Area leader(Label label, double atX, double atY) {
        return new Spots.Area(atX - 1, label.baseline() + 4, atX + 1, atY - 6);
    }

    private double width(String text) {
        return Words.width(text, form.fontSize());
    }
}
