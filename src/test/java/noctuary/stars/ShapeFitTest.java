package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import noctuary.stars.sim.StampMaker;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeFitTest {
    private static final int SIDE = 61;

    /**
     * Moffat 1969: 61 x 61 pixels, centre 30.3, 29.8, flux 1e5, FWHM 4, beta 3; sum and highest pixel by scipy 1.10.1.
     */
    @Test
    void theSimulatorsStampHoldsTheLightItShould() {
        double[] pixels = StampMaker.moffat(SIDE, 30.3, 29.8, new StarShape.At(4, 0, 0, 3));
        double sum = 0;
        for (double p : pixels) {
            sum += 1e5 * p;
        }
        assertThat(sum).isCloseTo(99981.548, within(0.3));
        assertThat(1e5 * pixels[30 * SIDE + 30]).isCloseTo(3911.5694, within(0.004));
    }

    /** The fit must give back what was integrated, however narrow, long and off centre. */
    @ParameterizedTest
    @CsvSource({
        "4, 0, 0, 3",
        "1.4, 0, 0, 3.5",
        "1.4, 0.4, 30, 2.5",
        "2, 0.2, -70, 2.5",
        "3, 0.4, 10, 3.5",
        "4.5, 0, 0, 2.5",
        "7, 0.4, 45, 3.5",
        "1.1, 0, 0, 2.5"
    })
    void givesBackTheProfileItself(double fwhm, double ellipticity, double angleDeg, double beta) {
        double[] pixels = StampMaker.moffat(SIDE, 30.3, 29.8, new StarShape.At(fwhm, ellipticity, angleDeg, beta));
        double[] start = {9e4, 0, 0, Math.log(1.2 * fwhm), 0, 0, 0};
        Shape shape = new ShapeFit(new Moffat(beta), 1).fit(stamp(pixels, 2.5 * fwhm + 2), start);
        assertThat(shape.converged()).isTrue();
        assertThat(shape.fwhm()).isCloseTo(fwhm, within(1e-3 * fwhm));
        assertThat(shape.x()).isCloseTo(30.3, within(1e-3));
        assertThat(shape.y()).isCloseTo(29.8, within(1e-3));
        assertThat(shape.flux()).isCloseTo(1e5, within(100.0));
        assertThat(shape.shear().ellipticity()).isCloseTo(ellipticity, within(1e-3));
        if (ellipticity > 0) {
            assertThat(shape.shear().angleDeg()).isCloseTo(angleDeg, within(0.2));
        }
    }

    private static Stamp stamp(double[] pixels, double radius) {
        double[] dx = new double[pixels.length];
        double[] dy = new double[pixels.length];
        double[] value = new double[pixels.length];
        int n = 0;
        for (int i = 0; i < pixels.length; i++) {
            int x = i % SIDE - 30;
            int y = i / SIDE - 30;
            if (x * x + y * y <= radius * radius) {
                dx[n] = x;
                dy[n] = y;
                value[n++] = 1e5 * pixels[i];
            }
        }
        return new Stamp(30, 30, n, dx, dy, value, 1, 1);
    }
}
