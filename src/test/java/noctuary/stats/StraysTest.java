package noctuary.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that stray upwards, against tables of the normal distribution and against chance itself. */
class StraysTest {
    /** Upper tail over density of the standard normal distribution: Abramowitz &amp; Stegun, table 26.1 and 26.2.12. */
    @ParameterizedTest
    @CsvSource({"0,1.2533141", "2,0.4213692", "10,0.0990286", "-2,18.1003"})
    void tailsAreThoseOfTheTables(double u, double mills) {
        assertThat(Math.exp(Strays.logMills(u))).isCloseTo(mills, within(2e-5 * mills));
    }

    @Test
    void theDensityIntegratesToOne() {
        Strays strays = new Strays(0.3, 2.5);
        double sum = 0;
        for (double r = -8; r < 80; r += 0.01) {
            sum += 0.01 * Math.exp(strays.logDensity(r, 0.8));
        }
        assertThat(sum).isCloseTo(1, within(1e-6));
    }

    @Test
    void whatIsExpectedIsTheMeanOfWhatHappens() {
        Random random = new Random(5);
        double chance = 0;
        double amount = 0;
        int n = 0;
        for (int i = 0; i < 4_000_000; i++) {
            boolean strays = random.nextDouble() < 0.3;
            double by = strays ? -2.5 * Math.log(1 - random.nextDouble()) : 0;
            double value = by + 0.8 * random.nextGaussian();
            if (Math.abs(value - 1.5) < 0.05) {
                n++;
                chance += strays ? 1 : 0;
                amount += by;
            }
        }
        Strays.Expected expected = new Strays(0.3, 2.5).of(1.5, 0.8);
        assertThat(expected.chance()).isCloseTo(chance / n, within(0.01));
        assertThat(expected.mean()).isCloseTo(amount / n, within(0.02));
    }
}
