package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class VarianceShareTest {
    /** Three nights of four frames, worked in the project's handbook. */
    @Test
    void framesOfANightAreAlike() {
        VarianceShare share = VarianceShare.of(List.of(
                new double[] {3.4, 3.5, 3.3, 3.6}, new double[] {3.0, 3.1, 2.9, 3.2}, new double[] {3.8, 3.7, 3.9, 3.8
                }));
        assertThat(share.f()).isCloseTo(42.25, within(1e-6));
        assertThat(share.between() / 2).isCloseTo(.5633333, within(1e-6));
        assertThat(share.within() / 9).isCloseTo(.0133333, within(1e-6));
        assertThat(share.intraclass()).isCloseTo(.9116022, within(1e-6));
    }

    /** By hand: 1 + 39 · 0.6 and 1 + 59 · 0.8; 200 / 24.4. */
    @Test
    void fortyFramesCountAsFew() {
        assertThat(VarianceShare.designEffect(40, .6)).isCloseTo(24.4, within(1e-9));
        assertThat(VarianceShare.designEffect(60, .8)).isCloseTo(48.2, within(1e-9));
        assertThat(5 * 40 / VarianceShare.designEffect(40, .6)).isCloseTo(8.197, within(1e-3));
    }

    /** NIST StRD AtmWtAg, certified values: nine leading digits are the same. */
    @Test
    void silver() {
        Table table = Table.read("silver.csv");
        double[] weights = table.column(1);
        VarianceShare share = VarianceShare.of(
                List.of(java.util.Arrays.copyOfRange(weights, 0, 24), java.util.Arrays.copyOfRange(weights, 24, 48)));
        assertThat(share.f()).isCloseTo(15.9467335677930, within(15.9e-6));
        assertThat(share.between()).isCloseTo(3.63834187500000E-09, within(3.6e-15));
        assertThat(share.within()).isCloseTo(1.04951729166667E-08, within(1e-14));
    }
}
