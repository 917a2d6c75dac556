package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;

class FreedmanLaneTest {
    /** All 5,040 orders of the residuals refitted one by one with numpy 2.4 (lstsq): 16 reach t = -7.451. Four standard errors. */
    @Test
    void oneBlockOneCondition() {
        double[] y = {2.9, 3.4, 2.6, 3.1, 2.2, 2.5, 2.4};
        double[] side = {0, 0, 0, 0, 1, 1, 1};
        double[][] airmass = {{.10, .30, .05, .22, .12, .25, .31}};
        double p = FreedmanLane.p(y, side, airmass, new int[7], 1);
        assertThat(p).isCloseTo(16 / 5040.0, within(4 * error(16 / 5040.0)));
        assertThat(Regression.of(y, side, airmass[0]).coefficient(1).t()).isCloseTo(-7.450984661, within(1e-8));
    }

    /** All 32 swaps within pairs refitted with numpy 2.4: 4 reach t = -2.566. Four standard errors. */
    @Test
    void pairsAtEqualAirmass() {
        double[] y = {3.1, 2.8, 3.3, 2.6, 3.0, 2.7, 2.6, 2.8, 2.7, 2.4};
        double[] side = {0, 0, 0, 0, 0, 1, 1, 1, 1, 1};
        double[][] airmass = {{.1, .2, .3, .15, .05, .3, .1, .2, .4, .12}};
        int[] pair = {0, 1, 2, 3, 4, 0, 1, 2, 3, 4};
        assertThat(FreedmanLane.p(y, side, airmass, pair, 1)).isCloseTo(4 / 32.0, within(4 * error(4 / 32.0)));
    }

    /** Without conditions it is the relabelling of the sides itself. */
    @Test
    void nothingTakenOutIsThePlainTest() {
        double[] before = Samples.NIGHTS_BEFORE;
        double[] after = Samples.NIGHTS_AFTER;
        double[] y = new double[before.length + after.length];
        double[] side = new double[y.length];
        System.arraycopy(before, 0, y, 0, before.length);
        System.arraycopy(after, 0, y, before.length, after.length);
        Arrays.fill(side, before.length, side.length, 1);
        assertThat(FreedmanLane.p(y, side, new double[0][], new int[y.length], 3))
                .isCloseTo(10 / 462.0, within(4 * error(10 / 462.0)));
    }

    /**
     * Darwin's maize in pairs without conditions: two-sided 2 times 863 of 2<sup>15</sup> (Fisher 1935, The Design of
     * Experiments, section 21; values from memory). Four standard errors.
     */
    @Test
    void darwinsMaizeInPairs() {
        double[] y = Arrays.copyOf(Samples.MAIZE_EIGHTHS, 2 * Samples.MAIZE_EIGHTHS.length);
        double[] side = new double[y.length];
        Arrays.fill(side, 0, y.length / 2, 1);
        int[] pair = IntStream.range(0, y.length).map(i -> i % (y.length / 2)).toArray();
        double p = 2 * 863 / 32_768.0;
        assertThat(FreedmanLane.p(y, side, new double[0][], pair, 5)).isCloseTo(p, within(4 * error(p)));
    }

    /** Scatter far from normal and no true difference: three hundred times. Crossed by chance once in two thousand. */
    @Test
    void wildScatterRaisesNoFalseAlarms() {
        SplittableRandom random = new SplittableRandom(11);
        int alarms = 0;
        for (int run = 0; run < 300; run++) {
            double[] y =
                    random.doubles(14).map(u -> Math.pow(-Math.log(1 - u), 3)).toArray();
            double[] side = {0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1};
            double[][] airmass = {random.doubles(14).toArray()};
            alarms += FreedmanLane.p(y, side, airmass, new int[14], run) <= 0.05 ? 1 : 0;
        }
        assertThat(alarms)
                .isLessThanOrEqualTo(new BinomialDistribution(300, 0.05).inverseCumulativeProbability(0.9995));
    }

    private static double error(double p) {
        return Math.sqrt(p * (1 - p) / FreedmanLane.SHUFFLES);
    }
}
