package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates of FITS 4.0 section 9 and of the time paper (Rots et al. 2015), and what real headers make of them. */
class TimeCardsTest {
    private static String taken(String... cards) {
        return FitsBytes.header(cards).taken().map(c -> c.value().toString()).orElse("-");
    }

    private static int oddities(String... cards) {
        return FitsBytes.header(cards).oddities().size();
    }

    @ParameterizedTest
    @CsvSource({
        "2025-03-15T22:30:15.5, 2025-03-15T22:30:15.500Z, 0",
        "2018-09-13T16:25:56Z, 2018-09-13T16:25:56Z, 0",
        "2024-07-02T01:51:29.4505778, 2024-07-02T01:51:29.450577800Z, 0",
        "2016-12-31T23:59:60.5, 2017-01-01T00:00:00.500Z, 0",
        "2016-12-30T23:59:60, 2016-12-31T00:00:00Z, 1",
        "1951-08-09T09:60:00, 1951-08-09T10:00:00Z, 1",
        "2019-03-26, 2019-03-26T00:00:00Z, 1",
        "29/11/51, 1951-11-29T00:00:00Z, 1",
        "2020-02-30T00:00:00, -, 1",
        "2020-02-03T24:00:01, -, 1",
        "2020-02-03T12:61:00, -, 1",
        "yesterday, -, 1"
    })
    void readsOrRefuses(String text, String instant, int oddities) {
        assertThat(taken("DATE-OBS= '" + text + "'")).isEqualTo(instant);
        assertThat(oddities("DATE-OBS= '" + text + "'")).isEqualTo(oddities);
    }

    /** astropy 5.2.1: 2025-03-15T22:30:15.5 UTC is MJD 60749.93767940. */
    @Test
    void readsModifiedJulianDates() {
        Instant instant = Instant.parse(taken("MJD-OBS = 60749.93767940"));
        assertThat(Duration.between(instant, Instant.parse("2025-03-15T22:30:15.5Z"))
                        .abs())
                .isLessThan(Duration.ofMillis(2));
    }

    @ParameterizedTest
    @CsvSource({"UT, '00:57:33'", "TIME-OBS, '00:57:33'", "UTC, ' 0:57:33.0'", "UT, ' 0:57:33.00'", "TM-START, 3453.0"})
    void joinsADateWithItsClock(String keyword, String clock) {
        String[] cards = {"DATE-OBS= '2013-07-13'", String.format("%-8s= '%s'", keyword, clock)};
        assertThat(taken(cards)).isEqualTo("2013-07-13T00:57:33Z");
        assertThat(oddities(cards)).isZero();
    }

    @Test
    void takesTheTimeFromMjdOnTheSameDayOnly() {
        assertThat(taken("DATE-OBS= '2025-03-15'", "MJD-OBS = 60749.5")).isEqualTo("2025-03-15T12:00:00Z");
        assertThat(oddities("DATE-OBS= '2025-03-15'", "MJD-OBS = 60849.5")).isEqualTo(2);
    }

    @Test
    void prefersTheUndoubtedStart() {
        assertThat(taken("DATE-OBS= '2025-03-15T22:32:00'", "DATE-BEG= '2025-03-15T22:30:00'"))
                .isEqualTo("2025-03-15T22:30:00Z");
    }

    /** 300 s from 22:30:15.5: the middle is 22:32:45.5. */
    @Test
    void goesBackToTheStartWhereTheCommentSaysMiddle() {
        assertThat(taken("DATE-OBS= '2025-03-15T22:32:45.5' / mid exposure", "EXPTIME = 300.0"))
                .isEqualTo("2025-03-15T22:30:15.500Z");
        assertThat(FitsBytes.header("DATE-AVG= '2025-03-15T22:32:45.5'")
                        .middle()
                        .orElseThrow()
                        .value())
                .isEqualTo(Instant.parse("2025-03-15T22:32:45.5Z"));
    }

    @Test
    void saysWhereDateAndMjdDisagree() {
        assertThat(oddities("DATE-OBS= '2025-03-15T22:30:15.5'", "MJD-OBS = 60749.93767940"))
                .isZero();
        assertThat(oddities("DATE-OBS= '2025-03-15T22:30:15.5'", "MJD-OBS = 60750.02101273"))
                .isEqualTo(1);
        assertThat(oddities("DATE-OBS= '2025-03-15T22:30:15'", "TIMESYS = 'TAI'"))
                .isEqualTo(1);
        assertThat(oddities("DATE-OBS= '2025-03-15T22:30:15'", "TIMESYS = 'UTC'"))
                .isZero();
    }
}
