package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RobustTest {
    /** Computed with scipy 1.10.1 (median_abs_deviation, scale normal). */
    @Test
    void sigmaIgnoresAnOutlier() {
        double[] x = {100, 101, 99, 102, 98, 100, 103, 97, 100, 250};
        assertThat(Robust.median(x)).isEqualTo(100);
        assertThat(Robust.sigma(x)).isCloseTo(2.2239033, within(1e-7));
    }

    /** Type 7, computed with numpy 1.24.2 (percentile). */
    @Test
    void quantilesInterpolateLinearly() {
        assertThat(Robust.quantile(new double[] {1, 2, 3, 4}, 0.25)).isEqualTo(1.75);
        double[] x = {15, 20, 35, 40, 50};
        assertThat(Robust.quantile(x, 0.05)).isCloseTo(16, within(1e-12));
        assertThat(Robust.quantile(x, 0.40)).isCloseTo(29, within(1e-12));
        assertThat(Robust.quantile(x, 0.99)).isCloseTo(49.6, within(1e-12));
    }

    @Test
    void nothingHasNoMedian() {
        assertThat(Robust.median()).isNaN();
    }

    /**
     * Magnitudes of seven stars in two frames, one of them variable, worked by hand with 1.2533 for sqrt(π / 2): hence
     * the last digit.
     */
    @Test
    void theErrorOfAMedianIgnoresAVariableStar() {
        double[] difference = {.21, .23, .22, .20, .29, .22, -.45};
        assertThat(Robust.median(difference)).isCloseTo(.22, within(1e-12));
        assertThat(Robust.medianError(difference)).isCloseTo(.0070231, within(2e-7));
        assertThat(Math.pow(10, -0.4 * Robust.median(difference))).isCloseTo(.816582, within(1e-6));
    }
}
