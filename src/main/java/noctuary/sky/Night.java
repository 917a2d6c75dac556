package noctuary.sky;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** Nights as the journal counts them: local noon to local noon, named by the evening's date. */
public final class Night {
    private Night() {}

    /** The evening's date of the night in which {@code instant} falls. */
    public static LocalDate of(Instant instant, ZoneId zone) {
        var local = instant.atZone(zone);
        return local.toLocalTime().isBefore(LocalTime.NOON)
                ? local.toLocalDate().minusDays(1)
                : local.toLocalDate();
    }
}
