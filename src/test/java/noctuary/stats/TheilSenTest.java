package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TheilSenTest {
    /** scipy 1.17.1, stats.theilslopes. */
    @Test
    void oneWildPointMovesTheIntervalAndNotTheSlope() {
        TheilSen line = TheilSen.fit(new double[] {0, 1, 2, 3, 4, 5}, new double[] {1.0, 1.2, 1.9, 2.4, 9.0, 3.1});
        assertThat(line.slope()).isCloseTo(.475, within(1e-12));
        assertThat(line.intercept()).isCloseTo(.9625, within(1e-12));
        assertThat(line.low()).isCloseTo(.2, within(1e-12));
        assertThat(line.high()).isCloseTo(3.55, within(1e-12));
        assertThat(line.rises()).isTrue();
        assertThat(line.at(2)).isCloseTo(1.9125, within(1e-12));
    }

    /** scipy 1.17.1, stats.theilslopes: ties in both directions narrow Kendall's variance. */
    @Test
    void tiesCount() {
        TheilSen line = TheilSen.fit(new double[] {0, 1, 1, 2, 3, 3, 5, 8}, new double[] {1, 2, 2, 3, 3, 5, 4, 9});
        assertThat(line.slope()).isCloseTo(1.0, within(1e-9));
        assertThat(line.intercept()).isCloseTo(.5, within(1e-9));
        assertThat(line.low()).isCloseTo(.5, within(1e-9));
        assertThat(line.high()).isCloseTo(4.0 / 3, within(1e-9));
    }

    @Test
    void fourPointsCarryATrendOnlyWhenEveryPairDoes() {
        double[] hours = {0, 1, 2, 3};
        assertThat(TheilSen.fit(hours, new double[] {4, 3, 2, 1}).falls()).isTrue();
        assertThat(TheilSen.fit(hours, new double[] {4, 2, 3, 1}).falls()).isFalse();
    }

    @Test
    void pointsAboveOneAnotherHaveNoSlope() {
        assertThat(TheilSen.fit(new double[] {1, 1}, new double[] {2, 3}).slope())
                .isNaN();
        assertThatThrownBy(() -> TheilSen.fit(new double[1], new double[2])).hasMessage("1 x, but 2 y");
    }
}
