package noctuary.draw;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Exposure on one target adding up by date, attempt by attempt, towards a goal.
 *
 * @param goalHours NaN for none
 * @param series names in the order that keeps their look on every page; may be empty
 * @param attempts in any order; those without hours are left out
 */
public record ExposureGrowth(String title, double goalHours, List<String> series, List<Attempt> attempts)
        implements Chart {
    public ExposureGrowth {
        series = List.copyOf(series);
        attempts = attempts.stream()
                .filter(a -> Digits.isPositive(a.hours()))
                .sorted(Comparator.comparing(Attempt::date).thenComparing(Attempt::label))
                .toList();
    }

    /** @param href where the point leads, relative; null for nowhere */
    public record Attempt(LocalDate date, double hours, String series, String label, String href) {}

    boolean hasGoal() {
        return Digits.isPositive(goalHours);
    }

    double total() {
        return attempts.stream().mapToDouble(Attempt::hours).sum();
    }

    /** Such as {@code 13.4 h of 20.0 h, 67 %}. */
    String reached() {
        String total = Digits.hours(total());
        return hasGoal()
                ? total + " of " + Digits.hours(goalHours) + ", " + Digits.fixed(100 * total() / goalHours, 0) + " %"
                : total;
    }

    @Override
    public String svg(String id, Form form) {
        Map<String, Look> looks =
                Look.of(series, attempts.stream().map(Attempt::series).toList());
        return new GrowthPlot(this, looks, form).draw(new Alternative(id, title, description()));
    }

    private String description() {
        if (attempts.isEmpty()) {
            return "No exposure yet" + (hasGoal() ? " of a goal of " + Digits.hours(goalHours) : "") + ".";
        }
        List<String> parts = attempts.stream()
                .map(a -> DateTicks.day(a.date()) + " " + Digits.hours(a.hours()) + " (" + a.label() + ", " + a.series()
                        + ")")
                .toList();
        return "Total exposure " + reached() + ". Attempts: " + String.join("; ", parts) + ".";
    }
}
