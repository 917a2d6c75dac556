package noctuary.draw;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * One measure over the months: a point for each entry with its spread, changes as marked dates, each series' span of
 * use and median.
 *
 * @param measure such as {@code Star FWHM}
 * @param unit of the measure; may be empty
 * @param series names in the order that keeps their look on every page; may be empty
 * @param points in any order; those without a finite value are left out
 */
public record Trend(
        String title, String measure, String unit, List<String> series, List<Point> points, List<Change> changes)
        implements Chart {
    public Trend {
        series = List.copyOf(series);
        points = points.stream()
                .filter(p -> Double.isFinite(p.value()))
                .sorted(Comparator.comparing(Point::date).thenComparing(Point::label))
                .toList();
        changes = changes.stream()
                .sorted(Comparator.comparing(Change::date).thenComparing(Change::label))
                .toList();
    }

    /**
     * @param low lower end of the spread, NaN when not known
     * @param high upper end of the spread, NaN when not known
     * @param label what the point stands for
     * @param href where the point leads, relative; null for nowhere
     */
    public record Point(
            LocalDate date, double value, double low, double high, String series, String label, String href) {
        boolean hasSpread() {
            return Double.isFinite(low) && Double.isFinite(high);
        }
    }

    public record Change(LocalDate date, String label) {}

    @Override
    public String svg(String id, Form form) {
        Map<String, Look> looks =
                Look.of(series, points.stream().map(Point::series).toList());
        return new TrendPlot(this, SeriesUse.of(this, looks), form)
                .draw(new Alternative(id, title, description(looks)));
    }

    /** The value with the unit, to three figures. */
    String quantity(double value) {
        return Digits.significant(value, 3) + (unit.isEmpty() ? "" : " " + unit);
    }

    private String description(Map<String, Look> looks) {
        if (points.isEmpty()) {
            return measure + ": nothing measured yet.";
        }
        List<String> sentences = new ArrayList<>();
        for (SeriesUse use : SeriesUse.of(this, looks)) {
            sentences.add(use.name() + ": median " + quantity(use.median()) + " of " + use.count() + ", from "
                    + DateTicks.day(use.first()) + " to " + DateTicks.day(use.last()));
        }
        changes.forEach(change -> sentences.add("Change on " + DateTicks.day(change.date()) + ": " + change.label()));
        return measure + " by date. " + String.join(". ", sentences) + ".";
    }
}
