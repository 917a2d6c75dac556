package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class BcaIntervalTest {
    /** All 6⁶ resamples, worked in the project's handbook by exact counting. */
    @Test
    void everyResampleOfSixNights() {
        BcaInterval interval = BcaInterval.of(s -> mean(s[0]), .95, 0, 1, Samples.NIGHTS_BEFORE);
        assertThat(interval.bias()).isCloseTo(0.0134318, within(1e-6));
        assertThat(interval.acceleration()).isCloseTo(0.0155602, within(1e-6));
        assertThat(interval.low()).isCloseTo(3.175000, within(1e-6));
        assertThat(interval.high()).isCloseTo(3.566667, within(1e-6));
    }

    /** scipy 1.10.1, bootstrap with 99 999 resamples; the tolerance is its own scatter. */
    @Test
    void twoSamples() {
        BcaInterval interval = BcaInterval.of(
                s -> mean(s[0]) - mean(s[1]), .95, 99_999, 1, Samples.NIGHTS_BEFORE, Samples.NIGHTS_AFTER);
        assertThat(interval.low()).isCloseTo(.174, within(.006));
        assertThat(interval.high()).isCloseTo(.659, within(.006));
    }

    /** Efron's law schools (Efron &amp; Tibshirani, table 3.1): correlation, acceleration, jackknife error. */
    @Test
    void lawSchools() {
        double[] test = {576, 635, 558, 578, 666, 580, 555, 661, 651, 605, 653, 575, 545, 572, 594};
        double[] grade = {3.39, 3.30, 2.81, 3.03, 3.44, 3.07, 3.00, 3.43, 3.36, 3.13, 3.12, 2.74, 2.76, 2.88, 2.96};
        double[] index = new double[15];
        Arrays.setAll(index, i -> i);
        assertThat(correlation(index, test, grade)).isCloseTo(.7763745, within(1e-6));
        Jackknife jackknife = Jackknife.of(s -> correlation(s[0], test, grade), new double[][] {index});
        assertThat(jackknife.acceleration()).isCloseTo(-.0756716, within(1e-6));
        assertThat(jackknife.standardError()).isCloseTo(.1425186, within(1e-6));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double correlation(double[] chosen, double[] x, double[] y) {
        double[] a = Arrays.stream(chosen).map(i -> x[(int) i]).toArray();
        double[] b = Arrays.stream(chosen).map(i -> y[(int) i]).toArray();
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < a.length; i++) {
            xy += (a[i] - mean(a)) * (b[i] - mean(b));
            xx += (a[i] - mean(a)) * (a[i] - mean(a));
            yy += (b[i] - mean(b)) * (b[i] - mean(b));
        }
        return xy / Math.sqrt(xx * yy);
    }
}
