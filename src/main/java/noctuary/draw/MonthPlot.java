package noctuary.draw;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;

/** The bars of {@link MonthBars}. */
final class MonthPlot {
    private final Svg svg;
    private final Form form;
    private final Box box;
    private final MonthSums sums;
    private final Map<String, Look> looks;
    private final List<YearMonth> months;
    private final Ticks ticks;
    private final Scale y;
    private final double step;

    MonthPlot(Svg svg, Form form, Box box, Ticks ticks, MonthSums sums, Map<String, Look> looks) {
        this.svg = svg;
        this.form = form;
        this.box = box;
        this.sums = sums;
        this.looks = looks;
        this.months = sums.months();
        this.ticks = ticks;
        this.y = new Scale(0, ticks.high(), box.bottom(), box.top());
        this.step = box.width() / months.size();
    }

    void draw() {
        Axes.levels(svg, box, y, ticks);
        for (int i = 0; i < months.size(); i++) {
            bars(months.get(i), centre(i));
            total(months.get(i), centre(i));
        }
        names();
    }

    private double centre(int month) {
        return box.left() + (month + 0.5) * step;
    }

    private void bars(YearMonth month, double x) {
        double width = Math.min(step * 0.72, 34);
        double below = 0;
        for (var part : sums.parts(month).entrySet()) {
            double height = y.length(part.getValue());
            svg.open("g", "class", "point");
            svg.tip(DateTicks.month(month) + ", " + part.getKey() + ": " + Digits.hours(part.getValue()));
            looks.get(part.getKey()).bar(svg, x - width / 2, y.at(below) - height, width, height);
            svg.close();
            below += part.getValue();
        }
    }

    /** Every total where there is room for it, else only the highest. */
    private void total(YearMonth month, double x) {
        double sum = sums.of(month);
        boolean room = Words.width("00.0", form.fontSize()) < step;
        if (sum > 0 && (room || sum == sums.highest())) {
            svg.text("value", Anchor.MIDDLE, x, y.at(sum) - 5, Digits.fixed(sum, sum < 9.95 ? 1 : 0));
        }
    }

    private void names() {
        int stride = stride();
        int year = 0;
        for (int i = 0; i < months.size(); i++) {
            YearMonth month = months.get(i);
            if ((month.getMonthValue() - 1) % stride == 0 || months.size() <= stride && i == 0) {
                svg.text("tick", Anchor.MIDDLE, centre(i), box.bottom() + 17, DateTicks.month(month.getMonthValue()));
                if (month.getYear() != year) {
                    svg.text("tick", Anchor.MIDDLE, centre(i), box.bottom() + 33, "" + month.getYear());
                }
                year = month.getYear();
            }
        }
    }

    /** Name every month, or every second, third, sixth or twelfth. */
    private int stride() {
        int needed = (int) Math.ceil((Words.width("Mmm", form.fontSize()) + 6) / step);
        return needed <= 3 ? Math.max(needed, 1) : needed <= 6 ? 6 : 12;
    }
}
