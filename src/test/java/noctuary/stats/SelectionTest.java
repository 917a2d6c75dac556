package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against numpy 2.4.6 and scipy 1.17.1 (median, median_abs_deviation, trim_mean) on eleven digits of pi. */
class SelectionTest {
    private static final float[] DIGITS = {3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5};

    @Test
    void medianScatterAndMiddleMean() {
        assertThat(Selection.median(DIGITS.clone(), 11)).isEqualTo(4);
        assertThat(Selection.sigma(DIGITS.clone(), 11, 4)).isCloseTo(1.482602218505602, within(1e-12));
        assertThat(Selection.middleMean(DIGITS.clone(), 11)).isCloseTo(27 / 7.0, within(1e-12));
        assertThat(Selection.kth(DIGITS.clone(), 11, 2)).isEqualTo(2);
    }

    @Test
    void anEvenCountTakesTheMiddleTwoOfTheFirstValuesOnly() {
        assertThat(Selection.median(DIGITS.clone(), 4)).isEqualTo(2);
        assertThat(Selection.median(new float[0], 0)).isNaN();
    }

    /** The examples of median_grouped in the documentation of Python's module statistics: 3.7, and 3.5 for an interval of 2. */
    @Test
    void groupedMedian() {
        float[] ten = {1, 2, 2, 3, 4, 4, 4, 4, 4, 5};
        assertThat(Selection.medianOfSteps(ten, 10)).isCloseTo(3.7, within(1e-12));
        assertThat(Selection.medianOfSteps(new float[] {1, 3, 3, 5, 7}, 5)).isCloseTo(3.5, within(1e-12));
    }
}
