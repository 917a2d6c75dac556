package noctuary.draw;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The drawing of an {@link ExposureGrowth}. */
final class GrowthPlot {
    private static final double LINE = 16;

    private final ExposureGrowth growth;
    private final Map<String, Look> looks;
    private final Form form;
    private final LocalDate from;
    private final LocalDate to;
    private final Key key;
    private final Box box;
    private final Scale x;
    private final Ticks ticks;
    private final Scale y;
    private final List<double[]> written = new ArrayList<>();

    GrowthPlot(ExposureGrowth growth, Map<String, Look> looks, Form form) {
        this.growth = growth;
        this.looks = looks;
        this.form = form;
        List<ExposureGrowth.Attempt> attempts = growth.attempts();
        LocalDate first = attempts.isEmpty() ? LocalDate.EPOCH : attempts.get(0).date();
        LocalDate last = attempts.isEmpty()
                ? LocalDate.EPOCH
                : attempts.get(attempts.size() - 1).date();
        long margin = Math.max(6, (last.toEpochDay() - first.toEpochDay()) / 14);
        this.from = first.minusDays(margin);
        this.to = last.plusDays(margin);
        this.key = new Key(looks.size() > 1 ? keyItems(looks) : List.of(), form);
        double top = 34 + key.height();
        this.box = new Box(form.pick(44, 38), top, form.width() - 10, top + form.pick(230, 200));
        this.x = new Scale(from.toEpochDay(), to.toEpochDay(), box.left(), box.right());
        double goal = growth.hasGoal() ? growth.goalHours() : 0;
        this.ticks = Ticks.fromZero(Math.max(goal, growth.total()) * 1.04, 6);
        this.y = new Scale(0, ticks.high(), box.bottom(), box.top());
    }

    private static List<Key.Item> keyItems(Map<String, Look> looks) {
        List<Key.Item> items = new ArrayList<>();
        looks.forEach((name, look) -> items.add(new Key.Item(name, (svg, x, y) -> look.point(svg, x, y, 4.6))));
        return items;
    }

    String draw(Alternative words) {
        Svg svg = Svg.linked(words, "growth", form, box.bottom() + 40);
        key.draw(svg, 4, 0);
        Axes.name(svg, 4, box.top() - 18, "Total exposure", "hours");
        Axes.levels(svg, box, y, ticks);
        goal(svg);
        if (growth.attempts().isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "no exposure yet");
            return svg.end();
        }
        Axes.times(svg, box, x, DateTicks.between(from, to, (int) form.pick(13, 7)));
        svg.path("steps", steps());
        attempts(svg);
        return svg.end();
    }

    private void goal(Svg svg) {
        if (growth.hasGoal()) {
            double at = y.at(growth.goalHours());
            svg.line("goal", box.left(), at, box.right(), at);
            boolean above = at - box.top() > 16;
            String text = "goal " + Digits.hours(growth.goalHours());
            svg.text("label halo", Anchor.START, box.left() + 6, at + (above ? -5 : 15), text);
            double width = Words.width(text, form.fontSize());
            written.add(
                    new double[] {box.left(), at + (above ? -18 : 2), box.left() + 6 + width, at + (above ? 0 : 18)});
        }
    }

    private Trace steps() {
        Trace trace = new Trace().move(box.left(), y.at(0));
        double sum = 0;
        for (ExposureGrowth.Attempt attempt : growth.attempts()) {
            double at = x.at(attempt.date().toEpochDay());
            trace.line(at, y.at(sum));
            sum += attempt.hours();
            trace.line(at, y.at(sum));
        }
        return trace.line(box.right(), y.at(sum));
    }

    private void attempts(Svg svg) {
        double sum = 0;
        for (ExposureGrowth.Attempt attempt : growth.attempts()) {
            sum += attempt.hours();
            double atX = x.at(attempt.date().toEpochDay());
            double atY = y.at(sum);
            svg.openLink(attempt.href(), "point");
            svg.tip(attempt.label() + ", " + DateTicks.day(attempt.date()) + ", " + attempt.series() + ": "
                    + Digits.hours(attempt.hours()) + ", " + Digits.hours(sum) + " in all");
            looks.get(attempt.series()).point(svg, atX, atY, 4.6);
            label(svg, attempt, atX, atY);
            svg.close();
        }
    }

    /** Left of and above the steps where there is room, else right of and below them, else only in the tip. */
    private void label(Svg svg, ExposureGrowth.Attempt attempt, double atX, double atY) {
        String text = Words.within(attempt.label(), box.width() * 0.5, form.fontSize()) + " +"
                + Digits.hours(attempt.hours());
        double width = Words.width(text, form.fontSize());
        double[] before = {atX - 10 - width, atY - LINE + 4, atX - 10, atY + 4};
        double[] after = {atX + 10, atY + 4, atX + 10 + width, atY + LINE + 4};
        if (before[0] > box.left() && free(before)) {
            svg.text("label halo", Anchor.END, atX - 10, atY, text);
            written.add(before);
        } else if (after[2] < form.width() && free(after)) {
            svg.text("label halo", Anchor.START, atX + 10, atY + LINE, text);
            written.add(after);
        }
    }

    private boolean free(double[] area) {
        return written.stream()
                .noneMatch(
                        other -> area[0] < other[2] && area[2] > other[0] && area[1] < other[3] && area[3] > other[1]);
    }
}
