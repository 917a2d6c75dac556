package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import noctuary.fits.SkyPlane;
import noctuary.image.Affine;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkyFrameTest {
    /**
     * From the linear transformation of FITS 4.0 section 8: CD = s [-cos a, sin a; sin a, cos a] seen with +y at position
     * angle a, east to the left; the first column negated where mirrored. Up on the screen must be north, right west.
     */
    @ParameterizedTest
    @CsvSource({"0,false", "30,false", "114,false", "250,false", "0,true", "30,true", "200,true"})
    void upIsNorthAndRightIsWest(double angle, boolean mirrored) {
        double a = Math.toRadians(angle);
        double east = mirrored ? 1 : -1;
        double[][] cd = {{east * Math.cos(a), Math.sin(a)}, {-east * Math.sin(a), Math.cos(a)}};
        Affine screen = SkyFrame.screen(new SkyPlane(10, 20, 1, angle, mirrored));
        double upX = -screen.xy();
        double upY = -screen.yy();
        assertThat(cd[0][0] * upX + cd[0][1] * upY).as("east when going up").isCloseTo(0, within(1e-12));
        assertThat(cd[1][0] * upX + cd[1][1] * upY).as("north when going up").isCloseTo(1, within(1e-12));
        assertThat(cd[0][0] * screen.xx() + cd[0][1] * screen.yx())
                .as("east to the right")
                .isCloseTo(-1, within(1e-12));
        assertThat(cd[1][0] * screen.xx() + cd[1][1] * screen.yx()).isCloseTo(0, within(1e-12));
    }
}
