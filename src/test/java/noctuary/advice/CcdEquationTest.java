package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked examples of the CCD equation. */
class CcdEquationTest {
    private static final CcdEquation.Pixel PIXEL = new CcdEquation.Pixel(200, 5, 3, 0);

    /** Howell, Handbook of CCD Astronomy, worked example "about 342"; inputs from memory. */
    @Test
    void theBooksExample() {
        CcdEquation.Pixel pixel = new CcdEquation.Pixel(620 * 5, 1.8, 5, 0);
        double snr = CcdEquation.snr(24013 * 5, 1, Double.POSITIVE_INFINITY, pixel);
        assertThat(snr).isCloseTo(342.08, within(0.05));
    }

    /** Merline and Howell 1995: the background's own error and rounding count too; worked out by hand. */
    @Test
    void aBackgroundFromFewPixelsCosts() {
        assertThat(CcdEquation.snr(1e4, 50, Double.POSITIVE_INFINITY, PIXEL)).isCloseTo(69.5048, within(1e-4));
        assertThat(CcdEquation.snr(1e4, 50, 500, PIXEL)).isCloseTo(67.7752, within(1e-4));
        double rounded = CcdEquation.snr(1e4, 50, 500, new CcdEquation.Pixel(200, 5, 3, 1));
        assertThat(rounded).isCloseTo(67.7680, within(1e-4));
        assertThat(CcdEquation.magnitudeError(rounded)).isCloseTo(0.0160, within(5e-5));
    }

    /** Two levels of flats, gain 1.5 e/ADU and read noise 3 e: 670.6667 and 13337.3333 ADU², by hand. */
    @Test
    void aVarianceOfCountsIsTheirNumber() {
        double gain = 1.5;
        assertThat(new CcdEquation.Pixel(1000 * gain, 0, 3, 0).variance() / (gain * gain))
                .isCloseTo(670.6667, within(1e-4));
        assertThat(new CcdEquation.Pixel(20000 * gain, 0, 3, 0).variance() / (gain * gain))
                .isCloseTo(13337.3333, within(1e-4));
    }
}
