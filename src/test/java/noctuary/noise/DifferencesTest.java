package noctuary.noise;

import static noctuary.noise.Published.floats;
import static noctuary.noise.Published.triples;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import noctuary.stats.Robust;
import org.junit.jupiter.api.Test;

/**
 * Expected values: numpy 1.24.2 and scipy 1.10.1 on the fields of {@link Published}, with the formulas of Stoehr et al.
 * 2008 and Immerkær 1996. Pixels are kept as 32-bit floats here, hence tolerances of some 1e-4 where the reference has
 * 1e-7.
 */
class DifferencesTest {
    private static final double FLOATS = 3e-4;

    @Test
    void fieldsAreTheOnesTheValuesWereComputedFor() {
        double[] t1 =
                Arrays.stream(Published.t1()).flatMapToDouble(Arrays::stream).toArray();
        assertThat(t1[0]).isCloseTo(994.4494589, within(1e-7));
        assertThat(t1[1]).isCloseTo(1014.9447139, within(1e-7));
        assertThat(Arrays.stream(t1).average().orElseThrow()).isCloseTo(999.80785032, within(1e-8));
        assertThat(Robust.median(t1)).isCloseTo(999.88708831, within(1e-8));
        assertThat(Robust.sigma(t1)).isCloseTo(9.80615362, within(1e-7));
        double[] t2 =
                Arrays.stream(Published.t2()).flatMapToDouble(Arrays::stream).toArray();
        assertThat(Arrays.stream(t2).average().orElseThrow()).isCloseTo(1004.44023563, within(1e-7));
        assertThat(Robust.sigma(t2)).isCloseTo(10.6178080, within(1e-6));
    }

    @Test
    void derSnrOfTenValues() {
        float[][] row = {{3, 1, 4, 1, 5, 9, 2, 6, 5, 3}};
        assertThat(Differences.derSnr(row)).isCloseTo(3.02634866, within(1e-7));
    }

    @Test
    void immerkaerOfFiveRows() {
        float[][] rows = {
            {10, 12, 11, 13, 10}, {11, 15, 10, 12, 11}, {9, 10, 30, 11, 12}, {12, 11, 10, 9, 13}, {10, 13, 12, 11, 10}
        };
        assertThat(Differences.immerkaerMean(triples(rows))).isCloseTo(7.86802764, within(1e-7));
    }

    @Test
    void whiteNoiseAndASlopeGiveTheSame() {
        for (double[][] field : new double[][][] {Published.t1(), Published.t3()}) {
            float[][] rows = floats(field);
            assertThat(Differences.derSnr(rows)).isCloseTo(9.83968530, within(FLOATS));
            assertThat(Differences.immerkaerMean(triples(rows))).isCloseTo(10.22053660, within(FLOATS));
        }
    }

    @Test
    void starsMoveTheMedianLittle() {
        assertThat(Differences.derSnr(floats(Published.t2()))).isCloseTo(11.92573, within(FLOATS));
    }

    @Test
    void interpolationShows() {
        float[][] rows = floats(Published.t4());
        assertThat(Differences.derSnr(rows)).isCloseTo(4.94037, within(FLOATS));
        assertThat(Differences.immerkaerMean(triples(rows))).isCloseTo(1.62731, within(FLOATS));
    }

    @Test
    void medianFormAgreesWithTheMeanFormOnWhiteNoise() {
        assertThat(Differences.immerkaerMedian(triples(floats(Published.t1())))).isCloseTo(10.22, within(0.25));
    }

    /** Rounding to whole numbers adds 1/12 to the variance and nothing else. */
    @Test
    void wholeNumbersDoNotBiasTheMedian() {
        Random random = new Random(7);
        float[][] rows = new float[200][1000];
        for (float[] row : rows) {
            for (int x = 0; x < row.length; x++) {
                row[x] = Math.round(1000 + 1.3 * random.nextGaussian());
            }
        }
        assertThat(Differences.derSnr(rows)).isCloseTo(Math.sqrt(1.69 + 1 / 12.0), within(0.02));
    }

    @Test
    void zerosAndGapsAreSkippedAndNothingGivesNothing() {
        assertThat(Differences.derSnr(new float[][] {{0, 0, 0, 0, 0, 0}})).isNaN();
        assertThat(Differences.derSnr(new float[][] {{1, 2}})).isNaN();
        assertThat(Differences.derSnr(new float[][] {{1, 2, Float.NaN, 3, 4}})).isNaN();
        assertThat(Differences.immerkaerMedian(new float[0][][])).isNaN();
    }
}
