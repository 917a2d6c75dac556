package noctuary.draw;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import noctuary.stats.Robust;

/** When one series of a {@link Trend} was used, and its median. */
record SeriesUse(String name, Look look, LocalDate first, LocalDate last, double median, int count) {
    static List<SeriesUse> of(Trend trend, Map<String, Look> looks) {
        List<SeriesUse> uses = new ArrayList<>();
        looks.forEach((name, look) -> {
            List<Trend.Point> points =
                    trend.points().stream().filter(p -> p.series().equals(name)).toList();
            double median = Robust.median(
                    points.stream().mapToDouble(Trend.Point::value).toArray());
            LocalDate first = points.get(0).date();
            LocalDate last = points.get(points.size() - 1).date();
            uses.add(new SeriesUse(name, look, first, last, median, points.size()));
        });
        return uses;
    }
}
