package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.ForkJoinPool;
import noctuary.image.Plane;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What must not change when the same light is stored another way, and what must change with it. */
class InvarianceTest {
    private static final int WIDTH = 520;
    private static final int HEIGHT = 400;
    private static float[] pixels;
    private static StarField field;

    @BeforeAll
    static void measure() {
        Plane plane = new SkySimulator(WIDTH, HEIGHT, 8)
                .shape(StarShape.constant(2.6, 0.2, 25, 3))
                .stars(130, 15, 250, 18)
                .hotPixels(30)
                .frame()
                .plane();
        pixels = new float[WIDTH * HEIGHT];
        for (int y = 0; y < HEIGHT; y++) {
            plane.copyRow(0, y, WIDTH, pixels, y * WIDTH);
        }
        field = StarField.measure(plane, StarField.Conditions.PLAIN);
    }

    @Test
    void floatsGiveWhatStoredShortsGive() {
        assertThat(measured(WIDTH, HEIGHT, pixels.clone())).isEqualTo(field);
    }

    @Test
    void oneThreadGivesTheSameAsMany() throws Exception {
        ForkJoinPool one = new ForkJoinPool(1);
        try {
            StarField alone =
                    one.submit(() -> measured(WIDTH, HEIGHT, pixels.clone())).get();
            assertThat(alone).isEqualTo(field);
        } finally {
            one.shutdown();
        }
    }

    @Test
    void gainAndPedestalChangeOnlyTheScale() {
        float[] other = new float[pixels.length];
        for (int i = 0; i < other.length; i++) {
            other[i] = 1000 + 4 * pixels[i];
        }
        StarField scaled = measured(WIDTH, HEIGHT, other);
        assertThat(scaled.fwhmPx().orElseThrow().median())
                .isCloseTo(field.fwhmPx().orElseThrow().median(), within(1e-4));
        assertThat(scaled.stars()).hasSameSizeAs(field.stars());
        assertThat(scaled.stars().get(0).flux())
                .isCloseTo(
                        4 * field.stars().get(0).flux(),
                        within(1e-4 * scaled.stars().get(0).flux()));
        assertThat(scaled.background().noise())
                .isCloseTo(
                        4 * field.background().noise(),
                        within(1e-3 * scaled.background().noise()));
    }

    @Test
    void flippingMirrorsTheAngle() {
        float[] other = new float[pixels.length];
        for (int i = 0; i < other.length; i++) {
            other[i] = pixels[(HEIGHT - 1 - i / WIDTH) * WIDTH + i % WIDTH];
        }
        assertSameShape(measured(WIDTH, HEIGHT, other), -25);
    }

    @Test
    void transposingTurnsTheAngle() {
        float[] other = new float[pixels.length];
        for (int i = 0; i < other.length; i++) {
            other[i] = pixels[i % HEIGHT * WIDTH + i / HEIGHT];
        }
        assertSameShape(measured(HEIGHT, WIDTH, other), 65);
    }

    private static void assertSameShape(StarField other, double angleDeg) {
        double error = field.fwhmPx().orElseThrow().standardError();
        assertThat(other.fwhmPx().orElseThrow().median())
                .isCloseTo(field.fwhmPx().orElseThrow().median(), within(0.5 * error));
        assertThat(other.ellipticity().orElseThrow().median()).isCloseTo(0.2, within(0.01));
        assertThat(other.zones().get(4).angleDeg().orElseThrow()).isCloseTo(angleDeg, within(4.0));
    }

    private static StarField measured(int width, int height, float[] values) {
        return StarField.measure(Plane.of(width, height, values), StarField.Conditions.PLAIN);
    }
}
