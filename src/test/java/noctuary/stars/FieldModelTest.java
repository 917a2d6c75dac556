package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.Test;

/** A planted tilt and curvature come back within three of their own standard errors. */
class FieldModelTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 600;

    @Test
    void findsTiltAndCurvature() {
        StarShape shape = (x, y) -> {
            double u = 2 * (x + 0.5) / WIDTH - 1;
            double v = 2 * (y + 0.5) / HEIGHT - 1;
            return new StarShape.At(2.6 + 0.3 * u + 0.25 * (u * u + v * v), 0.1, 0, 3);
        };
        StarField field = measured(shape);
        FieldModel model = field.model().orElseThrow();
        double tilt = 2 * 0.3 * Math.hypot(WIDTH, HEIGHT) / WIDTH;
        assertThat(model.centreFwhmPx()).isCloseTo(2.6, within(3 * model.centreErrorPx() + 0.01));
        assertThat(model.tiltPx()).isCloseTo(tilt, within(3 * model.tiltErrorPx()));
        assertThat(model.tiltDirectionDeg()).isCloseTo(0, within(10.0));
        assertThat(model.cornerExcessPx()).isCloseTo(0.5, within(3 * model.cornerExcessErrorPx()));
        assertThat(model.tiltErrorPx()).isBetween(0.002, 0.08);
        assertThat(field.zones().get(5).fwhmPx().orElseThrow())
                .isGreaterThan(field.zones().get(3).fwhmPx().orElseThrow());
    }

    @Test
    void aFlatFieldHasNeither() {
        FieldModel model = measured(StarShape.constant(2.6, 0.1, 0, 3)).model().orElseThrow();
        assertThat(model.tiltPx()).isLessThan(4 * model.tiltErrorPx());
        assertThat(model.curvaturePx()).isCloseTo(0, within(3.5 * model.curvatureErrorPx()));
        assertThat(model.spreadPx()).isLessThan(0.05);
    }

    private static StarField measured(StarShape shape) {
        return StarField.measure(
                new SkySimulator(WIDTH, HEIGHT, 21)
                        .shape(shape)
                        .stars(300, 20, 250, 16)
                        .frame()
                        .plane(),
                StarField.Conditions.PLAIN);
    }
}
