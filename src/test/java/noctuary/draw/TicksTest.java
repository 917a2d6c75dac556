package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TicksTest {
    @Test
    void areRound() {
        assertThat(Ticks.fromZero(19, 5).values()).containsExactly(0.0, 5.0, 10.0, 15.0, 20.0);
        assertThat(Ticks.around(2.11, 3.43, 4).values()).containsExactly(2.0, 2.5, 3.0, 3.5);
        assertThat(Ticks.around(-26, 27, 6).values()).containsExactly(-40.0, -20.0, 0.0, 20.0, 40.0);
        assertThat(Ticks.around(0.1, 0.3, 4).values()).containsExactly(0.1, 0.2, 0.3);
    }

    @Test
    void labelNeighboursApart() {
        Ticks ticks = Ticks.around(0.02, 0.13, 4);
        assertThat(ticks.values().stream().map(ticks::label)).containsExactly("0.00", "0.05", "0.10", "0.15");
    }

    @Test
    void standAroundASingleValue() {
        assertThat(Ticks.around(3, 3, 5).low()).isLessThanOrEqualTo(3);
        assertThat(Ticks.around(3, 3, 5).high()).isGreaterThan(3);
        assertThat(Ticks.around(0, 0, 5).values()).contains(0.0);
        assertThat(Ticks.fromZero(0, 5).low()).isZero();
    }

    /** The step is 1, 2 or 5 times a power of ten, the ends enclose the range, and there are never too many. */
    @Test
    void encloseAnyRange() {
        Random random = new Random(1);
        for (int i = 0; i < 5000; i++) {
            double scale = Math.pow(10, random.nextInt(13) - 6);
            double low = random.nextGaussian() * scale;
            double high = low + random.nextDouble() * scale * Math.pow(10, random.nextInt(4) - 2);
            int most = 2 + random.nextInt(9);
            Ticks ticks = Ticks.around(low, high, most);
            double step = (ticks.high() - ticks.low()) / (ticks.values().size() - 1);
            double slack = 1e-6 * step;
            assertThat(ticks.values()).hasSizeBetween(2, most);
            assertThat(ticks.low()).isLessThanOrEqualTo(low + slack);
            assertThat(ticks.high()).isGreaterThanOrEqualTo(high - slack);
            double mantissa = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
            assertThat(List.of(1L, 2L, 5L)).contains(Math.round(mantissa));
            assertThat(mantissa).isCloseTo(Math.round(mantissa), offset(1e-6));
        }
    }

    @Test
    void putMonthsAtTheirFirstDay() {
        List<TimeTick> ticks = DateTicks.between(LocalDate.of(2024, 10, 4), LocalDate.of(2025, 4, 1), 12);
        assertThat(ticks.stream().map(TimeTick::label)).containsExactly("Nov", "Dec", "Jan", "Feb", "Mar", "Apr");
        assertThat(ticks.stream().map(TimeTick::under)).containsExactly("2024", "", "2025", "", "", "");
        assertThat(ticks.get(2).at()).isEqualTo(LocalDate.of(2025, 1, 1).toEpochDay());
    }

    @Test
    void thinOutMonthsOverYears() {
        List<TimeTick> ticks = DateTicks.between(LocalDate.of(2023, 1, 1), LocalDate.of(2026, 1, 1), 7);
        assertThat(ticks.stream().map(t -> t.label() + " " + t.under()))
                .containsExactly("Jan 2023", "Jul ", "Jan 2024", "Jul ", "Jan 2025", "Jul ", "Jan 2026");
    }

    @Test
    void nameDaysOverAShortSpan() {
        List<TimeTick> ticks = DateTicks.between(LocalDate.of(2025, 6, 10), LocalDate.of(2025, 6, 14), 8);
        assertThat(ticks.stream().map(TimeTick::label))
                .containsExactly("10 Jun", "11 Jun", "12 Jun", "13 Jun", "14 Jun");
    }

    @Test
    void countTheNightThroughMidnight() {
        List<TimeTick> ticks =
                ClockTicks.between(LocalDateTime.of(2025, 6, 14, 22, 41), LocalDateTime.of(2025, 6, 15, 3, 12), 6);
        assertThat(ticks.stream().map(TimeTick::label)).containsExactly("23:00", "00:00", "01:00", "02:00", "03:00");
        assertThat(ticks.stream().map(TimeTick::under)).containsExactly("14 Jun", "15 Jun", "", "", "");
    }
}
