package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.stars.sim.SimulatedFrame;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Colour mosaics are fitted on their green pixels alone, in sensor pixels. */
class MosaicTest {
    @ParameterizedTest
    @CsvSource({"1.8, 0, RGGB", "2.4, 0.2, GRBG", "4, 0.4, GBRG", "6, 0, BGGR"})
    void givesBackPlantedShapes(double fwhm, double ellipticity, Mosaic mosaic) {
        SimulatedFrame frame = new SkySimulator(700, 500, 11)
                .shape(StarShape.constant(fwhm, ellipticity, 30, 3))
                .mosaic(mosaic, 0.5, 0.7)
                .hotPixels(100)
                .stars(140, 25, 300, 4 * fwhm + 8)
                .frame();
        StarField field =
                StarField.measure(frame.plane(), new StarField.Conditions(Optional.of(mosaic), OptionalDouble.empty()));
        assertThat(field.fwhmPx().orElseThrow().median()).isCloseTo(fwhm, within(0.02 * fwhm));
        assertThat(field.ellipticity().orElseThrow().median()).isCloseTo(ellipticity, within(0.015));
        assertThat(field.stars().size()).isBetween(125, 147);
        assertThat(field.background().level())
                .isCloseTo(600, within(0.1 * field.background().noise()));
    }
}
