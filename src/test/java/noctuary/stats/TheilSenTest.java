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

    /**
     * Hollander &amp; Wolfe 1999, example 9.1, cloud seeding in five years: slope -.056 (data and slope from memory; scipy
     * 1.17.1, stats.theilslopes, gives -.05625 and the interval).
     */
    @Test
    void cloudSeedingLostItsEffect() {
        TheilSen line = TheilSen.fit(new double[] {1, 2, 3, 4, 5}, new double[] {1.26, 1.27, 1.12, 1.16, 1.03});
        assertThat(line.slope()).isCloseTo(-.05625, within(1e-12));
        assertThat(line.low()).isCloseTo(-.15, within(1e-12));
        assertThat(line.high()).isCloseTo(.04, within(1e-12));
    }

    /** NIST StRD Norris, by scipy 1.17.1, stats.theilslopes. */
    @Test
    void norris() {
        Table table = Table.read("norris.csv");
        TheilSen line = TheilSen.fit(table.column(1), table.column(0));
        assertThat(line.slope()).isCloseTo(1.0021968365553604, within(1e-9));
        assertThat(line.intercept()).isCloseTo(-0.0640158172232077, within(1e-9));
        assertThat(line.low()).isCloseTo(1.0011153245594469, within(1e-9));
        assertThat(line.high()).isCloseTo(1.0030534351145037, within(1e-9));
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
