package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StepTest {
    /** The Nile drops after 1898 (Cobb 1978); sums of squares by exact arithmetic. */
    @Test
    void theNileDropped() {
        ChangePoint step = ChangePoint.of(Table.read("nile.csv").column(1), 999, 1);
        assertThat(1870 + step.after()).isEqualTo(1898);
        assertThat(step.meanBefore()).isCloseTo(1097.75, within(1e-9));
        assertThat(step.meanAfter()).isCloseTo(849.97222, within(1e-5));
        assertThat(step.without()).isCloseTo(2835156.75, within(2.8));
        assertThat(step.with()).isCloseTo(1597457.194, within(1.6));
        assertThat(step.p()).isEqualTo(1 / 1000.0);
    }

    /** K and p worked in the project's handbook, formula of Pettitt (1979). */
    @Test
    void theNileDroppedByRanksToo() {
        Pettitt step = Pettitt.of(Table.read("nile.csv").column(1));
        assertThat(step.after()).isEqualTo(28);
        assertThat(step.k()).isEqualTo(1617);
        assertThat(step.p()).isCloseTo(3.591e-7, within(5e-11));
    }

    /** Noise alone: p below 0.1 in about a tenth of 200 series; 99.9 % of binomial draws lie within 8 to 35. */
    @Test
    void noiseHasNoStep() {
        int alarms = 0;
        for (int i = 0; i < 200; i++) {
            double[] noise = new SplittableRandom(i).doubles(20).toArray();
            alarms += ChangePoint.of(noise, 99, i).p() <= .1 ? 1 : 0;
        }
        assertThat(alarms).isBetween(8, 35);
    }
}
