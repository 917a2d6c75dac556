package noctuary.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values are worked out from the formula in the Javadoc unless a source stands beside them. */
class OpticsTest {
    @Test
    void aReducerShortensTheFocalLength() {
        double f = Optics.effectiveFocalLengthMm(700, 0.8);
        assertThat(f).isCloseTo(560, within(1e-12));
        assertThat(Optics.focalRatio(f, 100)).isCloseTo(5.6, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"3.76, 560, 1.384921", "3.76, 700, 1.107937", "9.0, 2000, 0.928192", "2.4, 135, 3.666930"})
    void scaleIsTheAngleOfOnePixel(double pixelUm, double focalMm, double expected) {
        assertThat(Optics.imageScaleArcsecPerPx(pixelUm, focalMm)).isCloseTo(expected, within(1e-6));
        assertThat(Optics.focalLengthMm(pixelUm, Optics.imageScaleArcsecPerPx(pixelUm, focalMm)))
                .isCloseTo(focalMm, within(1e-9));
    }

    /** The small-angle formula would give 15.27887, 10.18592 and 147.33 for the last three. */
    @ParameterizedTest
    @CsvSource({
        "23.49248, 560, 2.403255",
        "15.70176, 560, 1.606403",
        "28.25671, 560, 2.890441",
        "36, 135, 15.18929",
        "24, 135, 10.15922",
        "36, 14, 104.25003"
    })
    void fieldIsExactForWideLensesToo(double lengthMm, double focalMm, double expected) {
        assertThat(Optics.fieldDeg(lengthMm, focalMm)).isCloseTo(expected, within(1e-5));
    }

    /** The constants are roots of Bessel functions, found with scipy 1.10.1 (j1, brentq). */
    @ParameterizedTest
    @CsvSource({"80, 1.72958, 1.45919", "200, 0.69183, 0.58367"})
    void resolutionFollowsTheAperture(double apertureMm, double rayleigh, double airy) {
        assertThat(Optics.rayleighArcsec(550, apertureMm)).isCloseTo(rayleigh, within(1e-5));
        assertThat(Optics.airyFwhmArcsec(550, apertureMm)).isCloseTo(airy, within(1e-5));
    }

    /** Born &amp; Wolf §8.8, from memory: a quarter wave at the edge. */
    @ParameterizedTest
    @CsvSource({"5, 27.5", "7, 53.9", "10, 110", "2, 4.4"})
    void depthOfFocusGrowsWithTheSquareOfTheRatio(double ratio, double expectedUm) {
        assertThat(Optics.depthOfFocusUm(550, ratio)).isCloseTo(expectedUm, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"5, 1.375", "7, 1.925"})
    void nyquistPitch(double ratio, double expectedUm) {
        assertThat(Optics.nyquistPitchUm(550, ratio)).isCloseTo(expectedUm, within(1e-12));
    }

    @Test
    void widthsAddInQuadrature() {
        double blur = Optics.quadrature(1.45919, 2.0, 1.413);
        assertThat(blur).isCloseTo(2.85058, within(1e-4));
        assertThat(Optics.quadrature(blur, Optics.pixelFwhmArcsec(1.38490))).isCloseTo(3.00201, within(1e-4));
    }

    /** BK7 and fused silica at 587.6 nm, and a round index. */
    @ParameterizedTest
    @CsvSource({"2, 1.5168, 0.68143", "2, 1.4585, 0.62873", "2, 1.5, 0.66667"})
    void glassMovesTheFocusBack(double thicknessMm, double index, double expectedMm) {
        assertThat(Optics.glassShiftMm(thicknessMm, index)).isCloseTo(expectedMm, within(1e-5));
    }
}
