package noctuary.draw;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Ticks on an axis of dates, counted in days since 1970-01-01: whole months, or days where the span is short. */
final class DateTicks {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final int[] MONTH_STEPS = {1, 2, 3, 6, 12, 24, 60, 120, 600};
    private static final int[] DAY_STEPS = {1, 2, 5, 7, 14, 28};
    private static final int SHORT_SPAN_DAYS = 75;

    private DateTicks() {}

    static String month(int number) {
        return MONTHS.get(number - 1);
    }

    /** Such as Jun 2025. */
    static String month(YearMonth month) {
        return month(month.getMonthValue()) + " " + month.getYear();
    }

    /** Such as 3 Jun 2025. */
    static String day(LocalDate date) {
        return shortDay(date) + " " + date.getYear();
    }

    static String shortDay(LocalDate date) {
        return date.getDayOfMonth() + " " + month(date.getMonthValue());
    }

    /** At most {@code most} ticks within the range, both ends included. */
    static List<TimeTick> between(LocalDate from, LocalDate to, int most) {
        boolean brief = to.toEpochDay() - from.toEpochDay() < SHORT_SPAN_DAYS;
        return brief ? days(from, to, Math.max(2, most * 2 / 3)) : months(from, to, most);
    }

    private static List<TimeTick> days(LocalDate from, LocalDate to, int most) {
        long span = to.toEpochDay() - from.toEpochDay();
        int step = firstFitting(DAY_STEPS, span, most);
        List<TimeTick> ticks = new ArrayList<>();
        int year = 0;
        for (long day = -Math.floorDiv(-from.toEpochDay(), step) * step; day <= to.toEpochDay(); day += step) {
            LocalDate date = LocalDate.ofEpochDay(day);
            ticks.add(new TimeTick(day, shortDay(date), date.getYear() == year ? "" : "" + date.getYear()));
            year = date.getYear();
        }
        return ticks;
    }

    private static List<TimeTick> months(LocalDate from, LocalDate to, int most) {
        long first = index(YearMonth.from(from.minusDays(1)).plusMonths(1));
        long last = index(YearMonth.from(to));
        int step = firstFitting(MONTH_STEPS, last - first, most);
        List<TimeTick> ticks = new ArrayList<>();
        int year = 0;
        for (long m = -Math.floorDiv(-first, step) * step; m <= last; m += step) {
            LocalDate date = LocalDate.of((int) Math.floorDiv(m, 12L), (int) Math.floorMod(m, 12L) + 1, 1);
            String under = date.getYear() == year ? "" : "" + date.getYear();
            ticks.add(new TimeTick(date.toEpochDay(), month(date.getMonthValue()), under));
            year = date.getYear();
        }
        return ticks;
    }

    private static long index(YearMonth month) {
        return month.getYear() * 12L + month.getMonthValue() - 1;
    }

    private static int firstFitting(int[] steps, long span, int most) {
        for (int step : steps) {
            if (span / step + 1 <= most) {
                return step;
            }
        }
        return steps[steps.length - 1];
    }
}
