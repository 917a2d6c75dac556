package noctuary.draw;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Hours by month as bars, one stack a month; months without any stand empty between the first and the last.
 *
 * @param name what is counted, such as {@code Exposure}
 * @param series names in the order that keeps their look on every page; may be empty
 */
public record MonthBars(String title, String name, List<String> series, List<Hours> hours) implements Chart {
    public MonthBars {
        series = List.copyOf(series);
        hours = hours.stream().filter(h -> Digits.isPositive(h.hours())).toList();
    }

    /** Hours that one series adds to one month; several for the same month and series are added up. */
    public record Hours(YearMonth month, String series, double hours) {}

    @Override
    public String svg(String id, Form form) {
        Map<String, Look> looks =
                Look.of(series, hours.stream().map(Hours::series).toList());
        MonthSums sums = new MonthSums(hours, List.copyOf(looks.keySet()));
        Key key = new Key(looks.size() > 1 ? keyItems(looks, sums) : List.of(), form);
        double top = 36 + key.height();
        Ticks ticks = Ticks.fromZero(sums.highest(), 5);
        Box box = new Box(Axes.left(form, ticks), top, form.width() - 8, top + form.pick(190, 150));
        Svg svg = Svg.picture(new Alternative(id, title, description(sums)), "months", form, box.bottom() + 40);
        svg.open("defs");
        looks.values().forEach(look -> look.texture(svg));
        svg.close();
        key.draw(svg, 4, 0);
        Axes.name(svg, 4, top - 18, name, "hours by month");
        if (hours.isEmpty()) {
            Axes.nothing(svg, form, box.top() + box.height() / 2, "no hours yet");
        } else {
            new MonthPlot(svg, form, box, ticks, sums, looks).draw();
        }
        return svg.end();
    }

    private static List<Key.Item> keyItems(Map<String, Look> looks, MonthSums sums) {
        List<Key.Item> items = new ArrayList<>();
        looks.forEach((series, look) -> items.add(new Key.Item(
                series + ", " + Digits.hours(sums.ofSeries(series)),
                (svg, x, y) -> look.bar(svg, x - 6, y - 6, 12, 12))));
        return items;
    }

    private static String description(MonthSums sums) {
        if (sums.isEmpty()) {
            return "No hours yet.";
        }
        List<String> parts = sums.months().stream()
                .filter(month -> sums.of(month) > 0)
                .map(month -> DateTicks.month(month) + " " + Digits.hours(sums.of(month)))
                .toList();
        return "Hours by month: " + String.join(", ", parts) + ". In all " + Digits.hours(sums.total()) + ".";
    }
}
