package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NightTest {
    /** Offsets of the IANA zone database: Rome leaves summer time on 2025-10-26 and enters it on 2025-03-30. */
    @ParameterizedTest
    @CsvSource({
        "2025-06-14T22:30:00Z, Europe/Rome, 2025-06-14",
        "2025-06-15T02:00:00Z, Europe/Rome, 2025-06-14",
        "2025-06-15T09:59:59Z, Europe/Rome, 2025-06-14",
        "2025-06-15T10:00:00Z, Europe/Rome, 2025-06-15",
        "2025-10-26T10:59:59Z, Europe/Rome, 2025-10-25",
        "2025-10-26T11:00:00Z, Europe/Rome, 2025-10-26",
        "2025-03-30T09:59:59Z, Europe/Rome, 2025-03-29",
        "2025-03-30T10:00:00Z, Europe/Rome, 2025-03-30",
        "2025-01-01T05:00:00Z, America/St_Johns, 2024-12-31",
        "2025-01-01T23:30:00Z, Pacific/Auckland, 2025-01-02",
        "2025-01-01T22:30:00Z, Pacific/Auckland, 2025-01-01",
        "2025-06-14T23:59:59Z, UTC, 2025-06-14"
    })
    void aNightLastsFromLocalNoonToLocalNoon(String utc, String zone, String evening) {
        assertThat(Night.of(Instant.parse(utc), ZoneId.of(zone))).isEqualTo(LocalDate.parse(evening));
    }
}
