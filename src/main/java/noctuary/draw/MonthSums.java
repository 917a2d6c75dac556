package noctuary.draw;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Hours added up by month and, within it, by series in a fixed order. */
final class MonthSums {
    private final SortedMap<YearMonth, Map<String, Double>> months = new TreeMap<>();

    MonthSums(List<MonthBars.Hours> hours, List<String> order) {
        hours.stream()
                .sorted((a, b) -> order.indexOf(a.series()) - order.indexOf(b.series()))
                .forEach(h -> months.computeIfAbsent(h.month(), m -> new LinkedHashMap<>())
                        .merge(h.series(), h.hours(), Double::sum));
    }

    boolean isEmpty() {
        return months.isEmpty();
    }

    /** From the first month to the last, none left out. */
    List<YearMonth> months() {
        YearMonth last = months.lastKey();
        return Stream.iterate(months.firstKey(), m -> !m.isAfter(last), m -> m.plusMonths(1))
                .toList();
    }

    Map<String, Double> parts(YearMonth month) {
        return months.getOrDefault(month, Map.of());
    }

    double of(YearMonth month) {
        return parts(month).values().stream().mapToDouble(Double::doubleValue).sum();
    }

    double ofSeries(String series) {
        return months.values().stream()
                .mapToDouble(parts -> parts.getOrDefault(series, 0.0))
                .sum();
    }

    double total() {
        return months.keySet().stream().mapToDouble(this::of).sum();
    }

    double highest() {
        return months.keySet().stream().mapToDouble(this::of).max().orElse(0);
    }
}
