package noctuary.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A painted star holds its light, stands at its place and has the shape that the optics give it. */
class StarPainterTest {
    private static final int SIZE = 201;

    @Test
    void aStarKeepsItsLightAndItsPlace() {
        float[] plane = painted(100.3, 99.6, new Shape(4, 3, 0.5), 0.5e-3);
        double sum = 0;
        double x = 0;
        double y = 0;
        for (int at = 0; at < plane.length; at++) {
            sum += plane[at];
            x += plane[at] * (double) (at % SIZE);
            y += plane[at] * (double) (at / SIZE);
        }
        assertThat(sum).isCloseTo(1000, within(5.0));
        assertThat(x / sum).isCloseTo(100.3, within(0.01));
        assertThat(y / sum).isCloseTo(99.6, within(0.01));
    }

    /**
     * Moffat (1969), Astronomy and Astrophysics 3, 455: peak (beta - 1) / (pi alpha^2), half of it at half the FWHM.
     */
    @Test
    void theProfileIsAMoffatOfTheGivenWidth() {
        float[] plane = painted(100, 100, new Shape(20, 20, 0), 0.2);
        double alpha = 20 / (2 * Math.sqrt(StrictMath.pow(2, 1 / 3.0) - 1));
        double peak = plane[100 * SIZE + 100];
        assertThat(peak).isCloseTo(1000 * 2 / (Math.PI * alpha * alpha), within(0.01 * peak));
        assertThat(plane[100 * SIZE + 110] / peak).isCloseTo(0.5, within(0.005));
    }

    @Test
    void wrongSpacingDrawsCornersAwayFromTheMiddle() {
        Pointing pointing = new Pointing(928, 696, 463.5, 347.5, 1.33, 0, false);
        Moment still = new Moment(Instant.EPOCH, 60, 1.15, 3.2, 0, 10, 0, 1, 0);
        Optics optics = new Optics(DemoRig.HERON, pointing, -1.19);
        Shape corner = optics.shape(928, 696, List.of(still));
        assertThat(corner.angleRad()).isCloseTo(StrictMath.atan2(696, 928), within(0.01));
        assertThat(corner.ellipticity()).isGreaterThan(0.2);
        assertThat(optics.shape(464, 348, List.of(still)).ellipticity()).isLessThan(0.001);
    }

    @Test
    void guidingErrorDrawsStarsAlongRightAscension() {
        Pointing pointing = new Pointing(928, 696, 463.5, 347.5, 1.33, 30, false);
        Moment restless = new Moment(Instant.EPOCH, 60, 1.15, 3.2, 1.5, 10, 0, 1, 0);
        Shape middle = new Optics(DemoRig.HERON, pointing, 0).shape(464, 348, List.of(restless));
        double east = StrictMath.atan2(pointing.cd12(), pointing.cd11());
        assertThat(StrictMath.sin(middle.angleRad() - east)).isCloseTo(0, within(1e-6));
    }

    @Test
    void pixelsAndSkyAreInverse() {
        Pointing pointing = new Pointing(928, 696, 470, 340, 1.33, 97, true);
        assertThat(pointing.x(pointing.east(12, 34), pointing.north(12, 34))).isCloseTo(12, within(1e-9));
        assertThat(pointing.y(pointing.east(12, 34), pointing.north(12, 34))).isCloseTo(34, within(1e-9));
    }

    private static float[] painted(double x, double y, Shape shape, double faint) {
        float[][] planes = new float[1][SIZE * SIZE];
        new StarPainter(planes, SIZE, SIZE, faint).paint(x, y, new double[] {1000}, shape, false);
        return planes[0];
    }
}
