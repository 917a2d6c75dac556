package noctuary.draw;

import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;

/**
 * The nights of one year, a line for each month: hours used as a solid bar, hours lost hatched on top of it, a hollow
 * mark where a night was out but its hours are not known. A day without a mark has nothing recorded.
 *
 * @param nights those of other years are left out
 * @param fullMoons dates to be marked; may be empty
 */
public record NightCalendar(String title, int year, List<Night> nights, List<LocalDate> fullMoons) implements Chart {
    public NightCalendar {
        nights = nights.stream()
                .filter(n -> n.date().getYear() == year)
                .sorted(Comparator.comparing(Night::date))
                .toList();
        fullMoons = fullMoons.stream().filter(d -> d.getYear() == year).sorted().toList();
    }

    /**
     * @param usedHours exposure; NaN when not known
     * @param lostHours 0 when none were written down
     * @param label what the night was, for the pointer
     * @param href where the mark leads, relative; null for nowhere
     */
    public record Night(LocalDate date, double usedHours, double lostHours, String label, String href) {
        public Night {
            lostHours = Digits.isPositive(lostHours) ? lostHours : 0;
        }

        boolean known() {
            return Double.isFinite(usedHours) && usedHours >= 0;
        }

        double height() {
            return (known() ? usedHours : 0) + lostHours;
        }
    }

    @Override
    public String svg(String id, Form form) {
        return new CalendarPlot(this, form).draw(new Alternative(id, title, description()));
    }

    double used(Month month) {
        return nights.stream()
                .filter(n -> n.date().getMonth() == month && n.known())
                .mapToDouble(Night::usedHours)
                .sum();
    }

    private double used() {
        return nights.stream()
                .filter(Night::known)
                .mapToDouble(Night::usedHours)
                .sum();
    }

    private String description() {
        long unknown = nights.stream().filter(n -> !n.known()).count();
        double lost = nights.stream().mapToDouble(Night::lostHours).sum();
        StringBuilder text = new StringBuilder();
        text.append(nights.size())
                .append(nights.size() == 1 ? " night" : " nights")
                .append(" recorded in ");
        text.append(year).append(": ").append(Digits.hours(used())).append(" used, ");
        text.append(Digits.hours(lost)).append(" noted as lost");
        if (unknown > 0) {
            text.append(", ").append(unknown).append(" with hours not known");
        }
        text.append(". Days without a mark have nothing recorded.");
        for (Month month : Month.values()) {
            long count =
                    nights.stream().filter(n -> n.date().getMonth() == month).count();
            if (count > 0) {
                text.append(' ')
                        .append(DateTicks.month(month.getValue()))
                        .append(' ')
                        .append(count);
                text.append(count == 1 ? " night, " : " nights, ");
                text.append(Digits.hours(used(month))).append('.');
            }
        }
        return text.toString();
    }
}
