package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.sky.SkyPlace;
import org.junit.jupiter.api.Test;

class TimeLedgerTest {
    private static final TimeLedger.Place GREENWICH =
            new TimeLedger.Place(new SkyPlace(51.4778, 0), ZoneId.of("Europe/London"));
    private static final Spent MARCH = new Spent(
            LocalDate.of(2025, 3, 20),
            "Heron",
            5400,
            List.of(new Entry.Lost(45, "cabling", ""), new Entry.Lost(60, "cloud", "")));
    private static final Spent LATER = new Spent(LocalDate.of(2025, 3, 28), "Wren", 3600, List.of());

    /**
     * At the equinox the Sun stays more than 18° below the horizon while cos H is below sin(-18°)/cos(51.4778°), so for
     * 180° - acos(0.4961) each way: 8.03 h, by hand.
     */
    @Test
    void darkHoursAreThoseOfTheSunFarBelowTheHorizon() {
        TimeLedger time = TimeLedger.of(List.of(MARCH), Optional.of(GREENWICH));
        assertThat(time.months().get(0).darkHoursOut().getAsDouble()).isCloseTo(8.03, within(0.1));
    }

    @Test
    void clearIsWhatWasUsedAndWhatWasLostToAnythingButWeather() {
        TimeLedger.Row march =
                TimeLedger.of(List.of(MARCH, LATER), Optional.empty()).months().get(0);
        assertThat(march.nights()).isEqualTo(2);
        assertThat(march.usedHours()).isCloseTo(2.5, within(1e-12));
        assertThat(march.clearHours()).isCloseTo(3.25, within(1e-12));
        assertThat(march.lostHours()).containsExactly(Map.entry("cloud", 1.0), Map.entry("cabling", 0.75));
        assertThat(march.darkHours()).isEmpty();
    }

    @Test
    void hoursFallToTheirRigs() {
        assertThat(TimeLedger.of(List.of(MARCH, LATER), Optional.empty()).rigs())
                .extracting(TimeLedger.Row::name, TimeLedger.Row::usedHours)
                .containsExactly(tuple("Heron", 1.5), tuple("Wren", 1.0));
    }

    /** 45 min beside 90 min: half as much again, 1.25 log10(1.5) = 0.22 mag. */
    @Test
    void aCauseThatCanBeMendedTellsWhatItWouldHaveGiven() {
        assertThat(TimeLedger.of(List.of(MARCH), Optional.empty()).causes())
                .singleElement()
                .satisfies(cause -> {
                    assertThat(cause.ratio()).hasValue(1.5);
                    assertThat(cause.magnitudes().getAsDouble()).isCloseTo(0.22, within(0.005));
                });
    }
}
