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
}
