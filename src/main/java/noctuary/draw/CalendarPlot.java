package noctuary.draw;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;

/** The drawing of a {@link NightCalendar}. */
final class CalendarPlot {
    private static final int DAYS = 31;
    private static final double TOP = 22;

    private final NightCalendar calendar;
    private final Form form;
    private final double left;
    private final double step;
    private final double row;
    private final NightMarks marks;

    CalendarPlot(NightCalendar calendar, Form form) {
        this.calendar = calendar;
        this.form = form;
        this.left = form.pick(46, 34);
        this.step = (form.width() - left - form.pick(64, 52)) / DAYS;
        this.row = form.pick(32, 28);
        double longest = calendar.nights().stream()
                .mapToDouble(NightCalendar.Night::height)
                .max()
                .orElse(0);
        this.marks = new NightMarks(Math.max(4, Math.ceil(longest)), row - 6, step * 0.72);
    }

    String draw(Alternative words) {
        Key key = new Key(marks.key(!calendar.fullMoons().isEmpty()), form);
        double bottom = TOP + 12 * row;
        Svg svg = Svg.linked(words, "calendar", form, bottom + 12 + key.height());
        svg.open("defs");
        Texture.HATCH.define(svg, svg.idOf("lost"), "lost");
        svg.close();
        for (int day = 1; day <= 30; day += day == 1 ? 4 : 5) {
            svg.text("tick", Anchor.MIDDLE, x(day), 12, "" + day);
        }
        for (Month month : Month.values()) {
            month(svg, month);
        }
        calendar.fullMoons().forEach(date -> moon(svg, date));
        calendar.nights().forEach(night -> night(svg, night));
        key.draw(svg, 4, bottom + 10);
        return svg.end();
    }

    private void month(Svg svg, Month month) {
        double base = base(month.getValue());
        int days = YearMonth.of(calendar.year(), month).lengthOfMonth();
        svg.text("tick", Anchor.START, 4, base, DateTicks.month(month.getValue()));
        svg.line("hair", x(1) - step / 2, base, x(days) + step / 2, base);
        for (int day = 5; day <= days; day += 5) {
            svg.line("hair", x(day), base, x(day), base + 3);
        }
        double used = calendar.used(month);
        if (used > 0) {
            svg.text("value", Anchor.END, form.width() - 4, base, Digits.hours(used));
        }
    }

    private void night(Svg svg, NightCalendar.Night night) {
        double x = x(night.date().getDayOfMonth());
        double base = base(night.date().getMonthValue());
        svg.openLink(night.href(), "point");
        svg.tip(words(night));
        svg.rect("touch", x - step / 2, base - row + 4, step, row - 2);
        marks.draw(svg, x, base, night);
        svg.close();
    }

    private void moon(Svg svg, LocalDate date) {
        NightMarks.moon(svg, x(date.getDayOfMonth()), base(date.getMonthValue()) + 4.5);
    }

    private String words(NightCalendar.Night night) {
        String used = night.known() ? Digits.hours(night.usedHours()) + " used" : "hours not known";
        String lost = night.lostHours() > 0 ? ", " + Digits.hours(night.lostHours()) + " lost" : "";
        return DateTicks.day(night.date()) + ": " + night.label() + ", " + used + lost;
    }

    private double x(int day) {
        return left + (day - 0.5) * step;
    }

    private double base(int month) {
        return TOP + month * row - 6;
    }
}
