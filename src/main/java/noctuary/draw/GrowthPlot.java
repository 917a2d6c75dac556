package noctuary.draw;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The drawing of an {@link ExposureGrowth}. */
final class GrowthPlot {
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
    private final GrowthLabels labels;

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
        double goal = growth.hasGoal() ? growth.goalHours() : 0;
        this.ticks = Ticks.fromZero(Math.max(goal, growth.total()), 6);
        double top = 34 + key.height();
        this.box = new Box(Axes.left(form, ticks), top, form.width() - 10, top + form.pick(230, 200));
        this.x = new Scale(from.toEpochDay(), to.toEpochDay(), box.left(), box.right());
        this.y = new Scale(0, ticks.high(), box.bottom(), box.top());
        this.labels = new GrowthLabels(form, box, x, y);
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
        svg.text("label strong", Anchor.END, box.right(), box.top() - 18, growth.reached());
        goal(svg);
        if (growth.attempts().isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "no exposure yet");
            return svg.end();
        }
        Axes.times(svg, form, box, x, DateTicks.between(from, to, (int) form.pick(13, 7)));
        svg.path("steps", steps());
        attempts(svg);
        return svg.end();
    }

    private void goal(Svg svg) {
        if (growth.hasGoal()) {
            double at = y.at(growth.goalHours());
            svg.line("goal", box.left(), at, box.right(), at);
            boolean above = at - box.top() > 16;
            labels.goal(svg, "goal " + Digits.hours(growth.goalHours()), at + (above ? -5 : 15));
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
        List<Optional<GrowthLabels.Label>> words = labels.place(growth.attempts());
        double sum = 0;
        for (int i = 0; i < words.size(); i++) {
            ExposureGrowth.Attempt attempt = growth.attempts().get(i);
            sum += attempt.hours();
            double atX = x.at(attempt.date().toEpochDay());
            double atY = y.at(sum);
            svg.openLink(attempt.href(), "point");
            svg.tip(attempt.label() + ", " + DateTicks.day(attempt.date()) + ", " + attempt.series() + ": "
                    + Digits.hours(attempt.hours()) + ", " + Digits.hours(sum) + " in all");
            words.get(i).ifPresent(label -> label(svg, label, atX, atY));
            looks.get(attempt.series()).point(svg, atX, atY, 4.6);
            svg.close();
        }
    }

    private static void label(Svg svg, GrowthLabels.Label label, double atX, double atY) {
        if (label.leader()) {
            svg.line("leader", atX, atY - 6, atX, label.baseline() + 4);
        }
        svg.text("label halo", label.anchor(), label.x(), label.baseline(), label.text());
    }
}
