package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import noctuary.stars.sim.Dice;
import noctuary.stars.sim.SkySimulator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planes without stars to trust answer with a reason, soon and without an exception. */
@Timeout(20)
class PathologicalPlanesTest {
    @ParameterizedTest
    @CsvSource({"1,1", "5,5", "1,4000", "4000,1", "2,3", "17,16", "64,3", "100,100"})
    void emptyAndConstantPlanesGiveAReason(int width, int height) {
        for (float value : new float[] {0, 7, Float.NaN, Float.POSITIVE_INFINITY, Float.MAX_VALUE, -1e30f}) {
            float[] pixels = new float[width * height];
            Arrays.fill(pixels, value);
            refuses(Plane.of(width, height, pixels));
        }
    }

    @ParameterizedTest
    @CsvSource({"1,1", "5,5", "3,300", "16,16", "40,33", "300,200"})
    void noiseAloneGivesAReason(int width, int height) {
        Dice dice = new Dice(3);
        float[] pixels = new float[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (float) (1000 + 10 * dice.normal());
        }
        refuses(Plane.of(width, height, pixels));
    }

    @Test
    void hotPixelsAloneAreNoStars() {
        refuses(new SkySimulator(400, 300, 9).hotPixels(200).frame().plane());
    }

    @Test
    void halfMissingPlanesAreMeasuredOnTheRest() {
        Plane whole =
                new SkySimulator(600, 400, 4).stars(120, 30, 200, 25).frame().plane();
        float[] pixels = new float[600 * 400];
        for (int y = 0; y < 400; y++) {
            whole.copyRow(0, y, 600, pixels, y * 600);
            Arrays.fill(pixels, y * 600, y * 600 + 290, Float.NaN);
        }
        StarField field = StarField.measure(Plane.of(600, 400, pixels), StarField.Conditions.PLAIN);
        assertThat(field.fwhmPx().orElseThrow().median()).isBetween(2.95, 3.05);
        assertThat(field.stars()).allMatch(s -> s.x() > 286);
    }

    private static void refuses(Plane plane) {
        for (Optional<Mosaic> mosaic : java.util.List.of(Optional.<Mosaic>empty(), Optional.of(Mosaic.GBRG))) {
            StarField field = StarField.measure(plane, new StarField.Conditions(mosaic, OptionalDouble.of(60000)));
            assertThat(field.fwhmPx()).isEmpty();
            assertThat(field.whyNot()).isPresent();
            assertThat(field.zones()).hasSize(9);
        }
    }
}
