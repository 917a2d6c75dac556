package noctuary.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import noctuary.stats.Robust;

/**
 * One number against another, such as a setting and what it cost: a point each, told apart by series.
 *
 * @param across what the horizontal axis counts
 * @param up what the vertical axis counts, with its unit
 * @param series names in the order that keeps their look
 * @param points those without finite coordinates are left out
 */
public record StrengthPlot(String title, String across, String up, List<String> series, List<Point> points)
        implements Chart {
    public StrengthPlot {
        series = List.copyOf(series);
        points = points.stream()
                .filter(p -> Double.isFinite(p.x()) && Double.isFinite(p.y()))
                .sorted(Comparator.comparingDouble(Point::x)
                        .thenComparingDouble(Point::y)
                        .thenComparing(Point::label))
                .toList();
    }

    /**
     * @param label what the point stands for
     * @param href where it leads, relative; null for nowhere
     */
    public record Point(double x, double y, String series, String label, String href) {}

    @Override
    public String svg(String id, Form form) {
        Map<String, Look> looks =
                Look.of(series, points.stream().map(Point::series).toList());
        return new ScatterPlot(this, looks, form).draw(new Alternative(id, title, description(looks)));
    }

    private String description(Map<String, Look> looks) {
        if (points.isEmpty()) {
            return "Nothing measured yet.";
        }
        List<String> sentences = new ArrayList<>();
        for (String name : looks.keySet()) {
            double[] values = points.stream()
                    .filter(p -> p.series().equals(name))
                    .mapToDouble(Point::y)
                    .toArray();
            sentences.add(name + ": " + values.length + ", median " + Digits.significant(Robust.median(values), 2));
        }
        return up + " against " + across + ". " + String.join(". ", sentences) + ".";
    }
}
