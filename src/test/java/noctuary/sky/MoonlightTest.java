package noctuary.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class MoonlightTest {
    /** The worked value of specsim's documentation of the same model: V 19.855. */
    @Test
    void aPublishedValue() {
        double moonlight = Moonlight.nanolamberts(70, 20, 50, 45, 0.15);
        assertThat(moonlight).isCloseTo(389.516, within(1e-3));
        assertThat(Moonlight.magnitude(moonlight)).isCloseTo(19.855, within(1e-3));
    }

    /** The equations worked out step by step. */
    @Test
    void fullMoonOverADarkSite() {
        double moonlight = Moonlight.nanolamberts(60, 45, 60, 0, 0.172);
        assertThat(moonlight).isCloseTo(1338.6245, Percentage.withPercentage(1e-3));
        assertThat(Moonlight.magnitude(moonlight)).isCloseTo(18.51452, within(1e-4));
        double dark = Moonlight.darkSky(79, 60, 0.172);
        assertThat(dark).isCloseTo(88.5322, within(1e-3));
        assertThat(Moonlight.magnitude(dark) - Moonlight.magnitude(dark + moonlight))
                .isCloseTo(3.01843, within(1e-4));
    }

    @Test
    void halfMoonAtRightAngles() {
        assertThat(Moonlight.nanolamberts(60, 30, 90, 90, 0.172)).isCloseTo(81.8133, within(1e-3));
        assertThat(Moonlight.nanolamberts(22.0)).isCloseTo(54.0079, within(1e-3));
        assertThat(Moonlight.nanolamberts(21.5)).isCloseTo(85.5970, within(1e-3));
    }

    @Test
    void aMoonBelowTheHorizonGivesNoLight() {
        assertThat(Moonlight.nanolamberts(60, -1, 90, 0, 0.172)).isZero();
    }
}
