package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RankSumTest {
    /**
     * Hollander &amp; Wolfe, table 4.1, with the output of R's coin package for it: p 0.2544, shift 0.305, interval -0.15
     * to 0.76; further digits scipy 1.10.1.
     */
    @Test
    void permeabilityAsInHollanderAndWolfe() {
        RankSum test = RankSum.of(Samples.PERMEABILITY_TERM, Samples.PERMEABILITY_EARLY, 0.95);
        assertThat(test.u()).isEqualTo(35);
        assertThat(test.p()).isCloseTo(0.2544123, within(1e-6));
        assertThat(test.shift()).isCloseTo(0.305, within(1e-12));
        assertThat(test.low()).isCloseTo(-0.15, within(1e-12));
        assertThat(test.high()).isCloseTo(0.76, within(1e-12));
        assertThat(test.coverage()).isCloseTo(0.960040, within(1e-6));
    }

    /** The example of scipy's documentation of mannwhitneyu. */
    @Test
    void agesAtDiagnosis() {
        RankSum test = RankSum.of(new double[] {19, 22, 16, 29, 24}, new double[] {20, 11, 17, 12}, 0.95);
        assertThat(test.u()).isEqualTo(17);
        assertThat(test.p()).isCloseTo(0.1111111, within(1e-6));
        assertThat(test.shift()).isEqualTo(7);
    }

    /** scipy 1.10.1; p = 8 / 462. */
    @Test
    void sixNightsAgainstFive() {
        RankSum test = RankSum.of(Samples.NIGHTS_BEFORE, Samples.NIGHTS_AFTER, 0.95);
        assertThat(test.u()).isEqualTo(28);
        assertThat(test.p()).isCloseTo(8 / 462.0, within(1e-12));
        assertThat(test.shift()).isCloseTo(0.40, within(1e-12));
        assertThat(test.low()).isCloseTo(0.08, within(1e-12));
        assertThat(test.high()).isCloseTo(0.80, within(1e-12));
        assertThat(test.coverage()).isCloseTo(0.969697, within(1e-6));
    }

    /** 2 / C(n + n, n) by hand: 1/3, 1/10, 1/35, 1/126, 1/462; and 3 against 4, 3 against 5, 2 against 8. */
    @Test
    void apartAsCanBe() {
        int[][] sides = {{2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 6}, {3, 4}, {3, 5}, {4, 5}, {2, 8}, {1, 20}};
        double[] smallest = {.3333, .1, .028571, .007937, .002165, .05714, .03571, .01587, .04444, .09524};
        for (int i = 0; i < sides.length; i++) {
            double[] low = new SplittableRandom(1).doubles(sides[i][0]).toArray();
            double[] high = new SplittableRandom(2).doubles(sides[i][1], 2, 3).toArray();
            assertThat(RankSum.of(low, high, 0.95).p()).isCloseTo(smallest[i], within(5e-5));
        }
    }

    /** Coverage of the whole range of differences: 2/3, 9/10, 34/35, 125/126. */
    @Test
    void coverageOfTheWholeRange() {
        double[] coverage = {.6667, .9, .971429, .992063};
        for (int n = 2; n <= 5; n++) {
            double[] x = new SplittableRandom(n).doubles(n).toArray();
            double[] y = new SplittableRandom(-n).doubles(n).toArray();
            assertThat(RankSum.of(x, y, 0.9999).coverage()).isCloseTo(coverage[n - 2], within(5e-5));
        }
    }

    /** Every choice of three among six written out, with midranks 1, 2.5, 2.5, 4.5, 4.5, 6: 5 of 20 sum to at most 8. */
    @Test
    void tiesCountExactly() {
        RankSum test = RankSum.of(new double[] {1, 2, 3}, new double[] {2, 3, 4}, 0.95);
        assertThat(test.u()).isEqualTo(2.0 + 2 * 0.5 - 1);
        assertThat(test.p()).isCloseTo(2 * 5 / 20.0, within(1e-12));
    }

    @Test
    void anEmptySideIsRefused() {
        assertThatThrownBy(() -> RankSum.of(new double[0], new double[1], 0.95)).hasMessage("one side is empty");
    }
}
