package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
    @ParameterizedTest
    @CsvSource({"1, 1", "1.5, 1.5", "-0.001, 0", "0.125, 0.13", "100, 100", "1e-9, 0", "12345.678, 12345.68"})
    void writesCoordinatesShort(double value, String text) {
        assertThat(Digits.coordinate(value)).isEqualTo(text);
    }

    @Test
    void refusesACoordinateThatIsNone() {
        assertThatThrownBy(() -> Digits.coordinate(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "2.996, 3, 3.00",
        "0.07512, 2, 0.075",
        "1234.5, 3, 1230",
        "9.996, 3, 10.0",
        "0, 3, 0",
        "-2.5, 2, −2.5",
        "1e-5, 2, 0.000010",
        "0.0999, 2, 0.10"
    })
    void keepsSignificantFigures(double value, int figures, String text) {
        assertThat(Digits.significant(value, figures)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0, 1", "2.345, 2, 2.35", "-0.004, 2, 0.00", "-3.2, 1, −3.2", "9999, 0, 9999"})
    void roundsHalvesAwayAndHasNoNegativeZero(double value, int decimals, String text) {
        assertThat(Digits.fixed(value, decimals)).isEqualTo(text);
    }

    /** The rule of ISO 80000-1:2009, 7.3.1: groups of three, set apart by a small space, from the decimal sign on. */
    @Test
    void setsThousandsApart() {
        assertThat(Digits.fixed(12345, 0)).isEqualTo("12\u202f345");
        assertThat(Digits.fixed(1234567.25, 1)).isEqualTo("1\u202f234\u202f567.3");
    }

    @ParameterizedTest
    @CsvSource({"0.04, 1, 0.0", "0.05, 1, +0.1", "-7, 0, −7"})
    void signsWhatIsNotZero(double value, int decimals, String text) {
        assertThat(Digits.signed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0.7, 42 min", "0.999, 1.0 h", "13.44, 13.4 h", "99.96, 100 h", "0, 0 min"})
    void writesSpansOfTime(double hours, String text) {
        assertThat(Digits.hours(hours)).isEqualTo(text);
    }
}
