package noctuary.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as printed. */
final class Dates {
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private Dates() {}

    static String reading(LocalDate date) {
        return LONG.format(date);
    }

    static String month(YearMonth month) {
        return MONTH.format(month);
    }

    static String moment(Instant instant) {
        return MOMENT.format(instant.atOffset(ZoneOffset.UTC));
    }
}
