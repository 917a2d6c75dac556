package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stars whose shape cannot count are found and say why. */
class FlagsTest {
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void saturatedBlendedAndEdgeStarsAreLeftOut(boolean told) {
        SkySimulator sky = new SkySimulator(500, 400, 6)
                .shape(StarShape.constant(3, 0, 0, 3))
                .camera(1, 5, 500, 8000)
                .star(100, 100, 700)
                .star(300, 120, 900)
                .star(200, 300, 80)
                .star(203.2, 301, 70)
                .star(1, 200, 90);
        for (int i = 0; i < 40; i++) {
            sky.star(40 + 53 * (i % 8), 50 + 67 * (i / 8), 60 + i);
        }
        StarField field = StarField.measure(
                sky.frame().plane(),
                new StarField.Conditions(Optional.empty(), told ? OptionalDouble.of(8000) : OptionalDouble.empty()));
        assertThat(field.saturated()).isEqualTo(2);
        assertThat(flagged(field, 100, 100)).contains(Star.Flag.SATURATED);
        assertThat(flagged(field, 200, 300)).contains(Star.Flag.BLENDED);
        assertThat(flagged(field, 1, 200)).contains(Star.Flag.EDGE);
        assertThat(field.fwhmPx().orElseThrow().median()).isCloseTo(3, within(0.03));
    }

    private static Set<Star.Flag> flagged(StarField field, double x, double y) {
        return field.stars().stream()
                .filter(s -> Math.hypot(s.x() - x, s.y() - y) < 1.5)
                .findFirst()
                .orElseThrow()
                .flags();
    }
}
