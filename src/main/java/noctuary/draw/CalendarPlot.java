package noctuary.draw;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** The drawing of a {@link NightCalendar}. */
final class CalendarPlot {
    private static final int DAYS = 31;
    private static final double TOP = 22;

    private final NightCalendar calendar;
    private final Form form;
    private final double left;
    private final double step;
    private final double row;
    private final double full;
    private final Scale height;

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
        this.full = Math.max(4, Math.ceil(longest));
        this.height = new Scale(0, full, 0, row - 6);
    }

    String draw(Alternative words) {
        Key key = new Key(keyItems(), form);
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
        double top = base;
        if (night.known()) {
            top = used(svg, x, base, night.usedHours());
        } else {
            svg.circle("s1 hollow", x, base - 4, 3.4);
            top = base - 9;
        }
        if (night.lostHours() > 0) {
            lost(svg, x, top, night.lostHours());
        }
        svg.close();
    }

    private double used(Svg svg, double x, double base, double hours) {
        double high = Math.max(height.at(hours), hours > 0 ? 1.5 : 0);
        svg.rect("s1 bar full", x - step * 0.36, base - high, step * 0.72, high);
        return base - high;
    }

    private void lost(Svg svg, double x, double base, double hours) {
        double high = Math.max(height.at(hours), 1.5);
        String fill = "url(#" + svg.idOf("lost") + ")";
        svg.leaf(
                "rect",
                "class",
                "lost bar",
                "x",
                x - step * 0.36,
                "y",
                base - high,
                "width",
                step * 0.72,
                "height",
                high,
                "fill",
                fill);
    }

    private void moon(Svg svg, LocalDate date) {
        svg.circle("moon", x(date.getDayOfMonth()), base(date.getMonthValue()) + 4.5, 2.6);
    }

    private List<Key.Item> keyItems() {
        List<Key.Item> items = new ArrayList<>();
        items.add(new Key.Item(
                Digits.fixed(full, 0) + " h used", (svg, x, y) -> used(svg, x - 2, y + 6, full * 16 / (row - 6))));
        items.add(new Key.Item("lost", (svg, x, y) -> lost(svg, x - 2, y + 6, full * 12 / (row - 6))));
        items.add(new Key.Item("hours not known", (svg, x, y) -> svg.circle("s1 hollow", x - 2, y, 3.4)));
        if (!calendar.fullMoons().isEmpty()) {
            items.add(new Key.Item("full Moon", (svg, x, y) -> svg.circle("moon", x - 2, y, 2.6)));
        }
        items.add(new Key.Item("no mark: nothing recorded", (svg, x, y) -> svg.line("hair", x - 8, y, x + 4, y)));
        return items;
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
