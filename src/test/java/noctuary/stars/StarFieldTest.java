package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import noctuary.stars.sim.SimulatedFrame;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Synthetic truth: what was planted must come back. */
class StarFieldTest {
    @ParameterizedTest
    @CsvSource({"1.4, 0, 3.5", "1.8, 0.2, 2.5", "3, 0.4, 3.5", "6, 0, 2.5"})
    void findsPlantedShapes(double fwhm, double ellipticity, double beta) {
        SimulatedFrame frame = new SkySimulator(700, 500, 5)
                .shape(StarShape.constant(fwhm, ellipticity, 30, beta))
                .stars(150, 15, 300, 4 * fwhm + 4)
                .hotPixels(50)
                .frame();
        StarField field = StarField.measure(frame.plane(), StarField.Conditions.PLAIN);
        assertThat(field.whyNot()).isEmpty();
        assertThat(field.fwhmPx().orElseThrow().median()).isCloseTo(fwhm, within(0.01 * fwhm));
        assertThat(field.ellipticity().orElseThrow().median()).isCloseTo(ellipticity, within(0.01));
        assertThat(field.stars()).hasSizeBetween(140, 154);
        assertThat(field.moffatBeta().orElseThrow()).isCloseTo(beta, within(0.1 * beta));
    }
}
