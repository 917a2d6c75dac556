package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against scipy 1.10.1 (nct, t); 64 a side for d = 0.5 is Cohen (1988), table 2.4.1. */
class PowerTest {
    @Test
    void nightsPerSide() {
        double[] shifts = {.2, .5, .8, 1, 1.5, 2, 3};
        int[] eighty = {394, 64, 26, 17, 9, 6, 4};
        int[] ninety = {527, 86, 34, 23, 11, 7, 4};
        for (int i = 0; i < shifts.length; i++) {
            assertThat(Power.perSide(shifts[i], .8, .05, 1000)).hasValue(eighty[i]);
            assertThat(Power.perSide(shifts[i], .9, .05, 1000)).hasValue(ninety[i]);
        }
        assertThat(Power.perSide(.01, .8, .05, 1000)).isEmpty();
    }

    /** Roots of the power by scipy's noncentral t, to four figures. */
    @Test
    void detectableShift() {
        int[] nights = {3, 4, 5, 6, 8, 10, 15, 20, 30};
        double[] shifts = {3.071, 2.381, 2.024, 1.796, 1.507, 1.325, 1.060, .909, .736};
        for (int i = 0; i < nights.length; i++) {
            assertThat(Power.detectable(nights[i], nights[i], .8, .05)).isCloseTo(shifts[i], within(5e-4));
        }
    }

    @Test
    void pairs() {
        assertThat(Power.pairs(.5, .8, .05, 100)).hasValue(34);
        assertThat(Power.pairs(.8, .8, .05, 100)).hasValue(15);
        assertThat(Power.pairs(1.0, .8, .05, 100)).hasValue(10);
    }

    @Test
    void nightsAfterWhenTheNightsBeforeAreGone() {
        assertThat(Power.unpaired(1.5, 9, 7, .05)).isCloseTo(0.7903309, within(1e-6));
        assertThat(Power.unpaired(1.5, 9, 8, .05)).isCloseTo(0.8223981, within(1e-6));
        assertThat(Power.after(1.5, 9, .8, .05, 1000)).hasValue(8);
        assertThat(Power.after(1, 3, .8, .05, 10_000)).isEmpty();
    }

    /** 2 / √n times the t quantile with 2 n - 2: half-width of the interval over the scatter. */
    @Test
    void halfWidths() {
        int[] nights = {2, 3, 4, 5, 8};
        double[] widths = {4.303, 2.267, 1.730, 1.458, 1.072};
        for (int i = 0; i < nights.length; i++) {
            double reach = StudentTest.quantile(.975, 2 * nights[i] - 2) * Math.sqrt(2.0 / nights[i]);
            assertThat(reach).isCloseTo(widths[i], within(6e-4));
        }
    }

    @Test
    void withoutShiftThePowerIsTheLevel() {
        assertThat(Power.unpaired(0, 7, 4, .05)).isCloseTo(.05, within(1e-7));
        assertThat(Power.unpaired(0, 1, 2, .05)).isCloseTo(.05, within(1e-7));
        assertThat(Power.paired(0, 2, .01)).isCloseTo(.01, within(1e-7));
        assertThat(Power.unpaired(1, 1, 1, .05)).isZero();
    }
}
