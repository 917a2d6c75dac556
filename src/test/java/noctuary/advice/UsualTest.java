package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import noctuary.stars.sim.Dice;
import org.junit.jupiter.api.Test;

class UsualTest {
    @Test
    void oneMoreNightLooksUnusualOnceInTwoHundred() {
        Dice dice = new Dice(11);
        int trials = 20000;
        int high = 0;
        for (int n = 0; n < trials; n++) {
            double[] others = new double[8];
            Arrays.setAll(others, i -> Math.exp(0.15 * dice.normal()));
            high += new Usual(others).unusuallyHigh(Math.exp(0.15 * dice.normal())) ? 1 : 0;
        }
        double expected = 0.005 * trials;
        assertThat((double) high).isCloseTo(expected, within(4 * Math.sqrt(expected)));
    }

    @Test
    void fiveNightsAreNoMeasure() {
        double[] five = {2.5, 2.6, 2.4, 2.5, 2.6};
        assertThat(new Usual(five).unusuallyHigh(50)).isFalse();
        assertThat(new Usual(new double[] {2.5, 2.6, 2.4, 2.5, 2.6, 2.5}).unusuallyHigh(50))
                .isTrue();
    }
}
