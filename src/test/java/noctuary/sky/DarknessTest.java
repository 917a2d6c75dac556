package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;

class DarknessTest {
    private static final SkyPlace GREENWICH = new SkyPlace(51.4778, 0);
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    /** PyEphem 4.1.4, Sun's centre at -18 degrees, no refraction: 20:07:17 UTC. */
    @Test
    void darkBeginsWithTheSunAt18Degrees() {
        Darkness night = Darkness.of(LocalDate.of(2025, 3, 20), LONDON, GREENWICH);
        assertThat(night.begins().orElseThrow())
                .isCloseTo(Instant.parse("2025-03-20T20:07:17Z"), within(5, ChronoUnit.SECONDS));
        assertThat(night.dark())
                .isEqualTo(Duration.between(night.begins().get(), night.ends().orElseThrow()));
        assertThat(night.moonless()).isLessThan(night.dark());
    }

    /** The Sun's lowest point there is 15.09 degrees under the horizon (astropy 5.2.1). */
    @Test
    void midsummerOverGreenwichNeverGetsDark() {
        Darkness night = Darkness.of(LocalDate.of(2025, 6, 20), LONDON, GREENWICH);
        assertThat(night.begins()).isEmpty();
        assertThat(night.dark()).isZero();
        assertThat(night.moonless()).isZero();
    }

    @Test
    void polarNightLastsFromNoonToNoon() {
        Darkness night = Darkness.of(LocalDate.of(2025, 12, 21), ZoneId.of("UTC"), new SkyPlace(89.9, 0));
        assertThat(night.dark()).isEqualTo(Duration.ofHours(24));
    }

    /** New Moon on 2025-04-27 and full Moon on 2025-04-13, both UTC (published almanacs, from memory). */
    @Test
    void newMoonLeavesTheNightAndFullMoonTakesIt() {
        SkyPlace place = new SkyPlace(44.3, 9.2);
        ZoneId rome = ZoneId.of("Europe/Rome");
        Darkness newMoon = Darkness.of(LocalDate.of(2025, 4, 27), rome, place);
        Darkness fullMoon = Darkness.of(LocalDate.of(2025, 4, 12), rome, place);
        assertThat(newMoon.moonless()).isEqualTo(newMoon.dark());
        assertThat(fullMoon.moonless()).isLessThan(Duration.ofMinutes(5));
        assertThat(fullMoon.dark()).isGreaterThan(Duration.ofHours(6));
    }
}
