package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class StudentTestTest {
    private static final Offset<Double> DIGITS = within(1e-6);

    /** R's documentation of t.test on the data set sleep (Student 1908): t -1.8608, df 17.776, p 0.07939. */
    @Test
    void sleepAsTwoSamples() {
        StudentTest test = StudentTest.welch(Samples.SLEEP_ONE, Samples.SLEEP_TWO);
        assertThat(test.t()).isCloseTo(-1.8608135, DIGITS);
        assertThat(test.df()).isCloseTo(17.776474, DIGITS);
        assertThat(test.p()).isCloseTo(0.0793941, DIGITS);
        assertThat(test.low()).isCloseTo(-3.365483, DIGITS);
        assertThat(test.high()).isCloseTo(0.205483, DIGITS);
    }

    /** The same as pairs: t -4.0621, df 9, p 0.002833. */
    @Test
    void sleepAsPairs() {
        StudentTest test = StudentTest.paired(Samples.differences(Samples.SLEEP_ONE, Samples.SLEEP_TWO));
        assertThat(test.t()).isCloseTo(-4.0621277, DIGITS);
        assertThat(test.df()).isEqualTo(9);
        assertThat(test.p()).isCloseTo(0.00283289, DIGITS);
        assertThat(test.low()).isCloseTo(-2.459886, DIGITS);
        assertThat(test.high()).isCloseTo(-0.700114, DIGITS);
    }

    /** scipy 1.10.1. */
    @Test
    void sixNightsAgainstFive() {
        StudentTest test = StudentTest.welch(Samples.NIGHTS_BEFORE, Samples.NIGHTS_AFTER);
        assertThat(test.t()).isCloseTo(2.9977081, DIGITS);
        assertThat(test.df()).isCloseTo(8.7248258, DIGITS);
        assertThat(test.p()).isCloseTo(0.0155366, DIGITS);
        assertThat(test.low()).isCloseTo(0.099189, DIGITS);
        assertThat(test.high()).isCloseTo(0.721478, DIGITS);
    }

    /** By hand: of 20 pairs 3 lie above, 3 are equal, 14 below; the nights worked in the project's handbook. */
    /** 2 U / (m n) - 1 with the published U of 35 of table 4.1 in Hollander &amp; Wolfe, ten values against five. */
    @Test
    void cliffOfThePermeabilities() {
        assertThat(CliffDelta.of(Samples.PERMEABILITY_TERM, Samples.PERMEABILITY_EARLY))
                .isCloseTo(2 * 35 / 50.0 - 1, within(1e-12));
    }

    @Test
    void cliffCountsPairs() {
        assertThat(CliffDelta.of(new double[] {1, 2, 3, 4}, new double[] {2, 3, 4, 5, 6}))
                .isCloseTo(-0.55, within(1e-12));
        assertThat(CliffDelta.of(Samples.NIGHTS_BEFORE, Samples.NIGHTS_AFTER)).isCloseTo(0.8666667, DIGITS);
    }

    @Test
    void oneValueHasNoVariance() {
        assertThatThrownBy(() -> StudentTest.welch(new double[] {1}, new double[] {1, 2}))
                .hasMessage("a variance needs two values, not 1");
    }
}
