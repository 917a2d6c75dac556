package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoffatTest {
    /** Closed forms of Moffat 1969 (A&amp;A 3, 455), evaluated with mpmath 1.2.1. */
    @ParameterizedTest
    @CsvSource({
        "2.5, 1.1305006, 0.6779483",
        "3, 1.0196491, 0.6311919",
        "4, 0.8699589, 0.5860329",
        "4.765, 0.7914008, 0.5681055",
        "10, 0.5358114, 0.5280744"
    })
    void widthAndHalfFluxRadius(double beta, double fwhmOverAlpha, double halfFluxOverFwhm) {
        Moffat profile = new Moffat(beta);
        assertThat(profile.fwhmOverAlpha()).isCloseTo(fwhmOverAlpha, within(1e-6));
        assertThat(profile.halfFluxOverFwhm()).isCloseTo(halfFluxOverFwhm, within(1e-6));
    }

    @Test
    void theTableFollowsThePower() {
        Moffat profile = new Moffat(3.3);
        for (double v = 1; v < 3000; v *= 1.00137) {
            assertThat(profile.at(v) / Math.pow(v, -3.3)).isCloseTo(1, within(1.5e-5));
        }
    }

    /** Ellipticity, shear-type and angle of b/a = 0.8: closed form. */
    @Test
    void shearTurnsIntoEllipticity() {
        Shear shear = Shear.of(0.2, -30);
        assertThat(shear.ellipticity()).isCloseTo(0.2, within(1e-12));
        assertThat(shear.angleDeg()).isCloseTo(-30, within(1e-9));
        assertThat(shear.length()).isCloseTo(-Math.log(0.8) / 2, within(1e-12));
    }
}
