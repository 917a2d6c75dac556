package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SignedRankTest {
    /** Darwin's maize as in scipy's documentation of wilcoxon; shift and interval scipy 1.10.1. */
    @Test
    void heightsOfMaize() {
        double[] d = {6, 8, 14, 16, 23, 24, 28, 29, 41, -48, 49, 56, 60, -67, 75};
        SignedRank test = SignedRank.of(d, 0.95);
        assertThat(15 * 16 / 2 - test.v()).isEqualTo(24);
        assertThat(test.p()).isCloseTo(0.0412598, within(1e-6));
        assertThat(test.shift()).isEqualTo(25);
        assertThat(test.low()).isEqualTo(4);
        assertThat(test.high()).isEqualTo(41.5);
        assertThat(test.coverage()).isCloseTo(0.952087, within(1e-6));
    }

    /** Hollander &amp; Wolfe's depression scores as in R's documentation of wilcox.test: V 40, one-sided p 0.01953. */
    @Test
    void depressionScores() {
        double[] d = {.952, -.147, 1.022, .43, .62, .59, .49, -.08, .01};
        SignedRank test = SignedRank.of(d, 0.95);
        assertThat(test.v()).isEqualTo(40);
        assertThat(test.p()).isCloseTo(2 * 0.01953125, within(1e-12));
        assertThat(test.shift()).isCloseTo(0.46, within(1e-12));
        assertThat(test.low()).isCloseTo(0.01, within(1e-12));
        assertThat(test.high()).isCloseTo(0.786, within(1e-12));
        assertThat(test.coverage()).isCloseTo(0.960938, within(1e-6));
    }

    /** 2 / 2^n by hand. */
    @Test
    void fivePairsCannotReachTheLevelAndSixCan() {
        assertThat(SignedRank.of(new double[] {1, 2, 3, 4, 5}, 0.95).p()).isEqualTo(.0625);
        assertThat(SignedRank.of(new double[] {1, 2, 3, 4, 5, 6}, 0.95).p()).isEqualTo(.03125);
    }

    /** Ranks 1.5, 1.5, 3 with signs -, +, +: of eight sign patterns three reach at least 4.5. */
    @Test
    void tiesAndZeros() {
        SignedRank test = SignedRank.of(new double[] {-1, 1, 2, 0}, 0.95);
        assertThat(test.v()).isEqualTo(4.5);
        assertThat(test.p()).isCloseTo(2 * 3 / 8.0, within(1e-12));
        assertThat(SignedRank.of(new double[] {0, 0}, 0.95).p()).isEqualTo(1);
    }
}
