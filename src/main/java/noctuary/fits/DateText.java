package noctuary.fits;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date, with or without time, as FITS 4.0 section 9.1 and its predecessors write it.
 *
 * @param time nanoseconds of the day; absent for a date alone
 * @param carried true when minutes or seconds of 60 were carried over where no leap second can be
 */
record DateText(LocalDate date, Optional<Long> time, boolean carried) {
    private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})(?:[T ](.+?)Z?)?");
    /** FITS before 1997; the two digits mean a year of the twentieth century, whatever the frame's age. */
    private static final Pattern OLD = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{2})");

    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{1,2})(?::(\\d{1,2})(\\.\\d*)?)?Z?");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    private static final long SECOND = 1_000_000_000L;

    static Optional<DateText> parse(String text) {
        Matcher iso = ISO.matcher(text.strip());
        if (iso.matches()) {
            Optional<LocalDate> date = date(iso.group(1), iso.group(2), iso.group(3));
            return iso.group(4) == null
                    ? date.map(d -> new DateText(d, Optional.empty(), false))
                    : date.flatMap(d -> withClock(d, iso.group(4)));
        }
        Matcher old = OLD.matcher(text.strip());
        return old.matches()
                ? date("19" + old.group(3), old.group(2), old.group(1))
                        .map(d -> new DateText(d, Optional.empty(), false))
                : Optional.empty();
    }

    static Optional<DateText> withClock(LocalDate date, String clock) {
        Matcher parts = CLOCK.matcher(clock.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        long hours = Long.parseLong(parts.group(1));
        long minutes = Long.parseLong(parts.group(2));
        long seconds = parts.group(3) == null ? 0 : Long.parseLong(parts.group(3));
        if (hours > 23 || minutes > 60 || seconds > 60) {
            return Optional.empty();
        }
        boolean leap = hours == 23 && minutes == 59 && seconds == 60 && canEndWithLeapSecond(date);
        long nanos = (hours * 3600 + minutes * 60 + seconds) * SECOND + nanos(parts.group(4));
        return Optional.of(new DateText(date, Optional.of(nanos), (minutes == 60 || seconds == 60) && !leap));
    }

    private static boolean canEndWithLeapSecond(LocalDate date) {
        return date.getDayOfMonth() == date.lengthOfMonth()
                && (date.getMonthValue() == 6 || date.getMonthValue() == 12);
    }

    private static long nanos(String fraction) {
        return fraction == null ? 0 : Math.round(Double.parseDouble("0" + fraction) * SECOND);
    }

    /** Empty also for a year in which no such file can have been made. */
    private static Optional<LocalDate> date(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)))
                    .filter(date -> date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** UTC; a leap second falls on the first second of the next day, as in POSIX time. */
    Instant instant() {
        return date.atStartOfDay(ZoneOffset.UTC).toInstant().plusNanos(time.orElse(0L));
    }
}
