package noctuary.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
    /** N₁ N₂ π t² / A for twice 500 stars on 6248 by 4176 pixels, reach 2 px, worked out. */
    @Test
    void pairsByAccident() {
        assertThat(Chance.pairs(500, 500, 2, 6248.0 * 4176)).isCloseTo(0.1204, within(1e-4));
    }

    /** scipy 1.10.1, log10(poisson.sf(k - 1, mean)); ours is an upper bound. */
    @ParameterizedTest
    @CsvSource({"8, 0.5, -7.206231", "6, 0.01, -14.861055", "20, 4, -7.991378", "40, 20, -4.274072"})
    void poissonTail(int k, double mean, double expected) {
        assertThat(Chance.log10PoissonTail(k, mean)).isBetween(expected - 1e-6, expected + 0.06);
    }

    @Test
    void noMoreThanExpectedIsNoEvidence() {
        assertThat(Chance.log10PoissonTail(3, 3)).isZero();
        assertThat(Chance.log10Accidents(20, 30, 100, 100)).isPositive();
    }
}
