package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import noctuary.noise.SimulatedFrame;
import org.junit.jupiter.api.Test;

class StretchTest {
    /** The piecewise curve of IEC 61966-2-1, worked out with mpmath. */
    @Test
    void srgbFollowsTheStandard() {
        double[][] encoded = {{0.001, 0.01292}, {0.01, 0.0998528}, {0.18, 0.4613561}, {0.5, 0.7353570}};
        for (double[] pair : encoded) {
            assertThat(Srgb.encode(pair[0])).isCloseTo(pair[1], within(1e-6));
        }
        double[][] decoded = {{0.1, 0.0100228}, {0.5, 0.2140411}, {0.8, 0.6038273}, {128 / 255.0, 0.2158605}};
        for (double[] pair : decoded) {
            assertThat(Srgb.decode(pair[0])).isCloseTo(pair[1], within(1e-6));
        }
        assertThat(Srgb.decode(Srgb.encode(0.0031308))).isCloseTo(0.0031308, within(1e-9));
    }

    /** astropy 5.2.1, visualization.AsinhStretch. */
    @Test
    void normalisedAsinhAgreesWithAstropy() {
        assertThat(Asinh.normalised(0.01, 0.02)).isCloseTo(0.1044916, within(1e-6));
        assertThat(Asinh.normalised(0.1, 0.02)).isCloseTo(0.5021287, within(1e-6));
        assertThat(Asinh.normalised(0.01, 0.1)).isCloseTo(0.0332977, within(1e-6));
        assertThat(Asinh.normalised(0.1, 0.1)).isCloseTo(0.2939653, within(1e-6));
        assertThat(Asinh.normalised(0.5, 0.1)).isCloseTo(0.7712696, within(1e-6));
    }

    /** F(x) = asinh(αQx)/Q of Lupton et al. 2004, α = 1, Q = 8, worked out in closed form. */
    @Test
    void luptonsCurve() {
        assertThat(Asinh.lupton(0.01, 1, 8)).isCloseTo(0.00998936, within(1e-8));
        assertThat(Asinh.lupton(0.1, 1, 8)).isCloseTo(0.09158353, within(1e-8));
        assertThat(Asinh.lupton(1, 1, 8)).isCloseTo(0.34705904, within(1e-8));
    }

    /**
     * astropy 5.2.1, make_lupton_rgb with minimum 0, stretch 2, Q 8 gives 8-bit (62, 124, 62) and (145, 72, 0). Its F
     * is asinh(Q I / stretch) * 0.1 / asinh(0.1 Q): softening stretch / Q = 0.25, and the value 1 reached where that is
     * 1.
     */
    @Test
    void colourRuleAgreesWithAstropy() {
        double softening = 2 / 8.0;
        double white = softening * Math.sinh(Asinh.asinh(0.1 * 8) / 0.1);
        assertWithinOne(eightBit(new float[] {1, 2, 1}, softening, white), 62, 124, 62);
        assertWithinOne(eightBit(new float[] {2, 1, 0}, softening, white), 145, 72, 0);
    }

    private static void assertWithinOne(int[] found, int... expected) {
        for (int c = 0; c < 3; c++) {
            assertThat(found[c]).isCloseTo(expected[c], within(1));
        }
    }

    private static int[] eightBit(float[] rgb, double softening, double white) {
        Asinh.colour(rgb, 1, softening, white);
        int[] bytes = new int[3];
        Arrays.setAll(bytes, c -> (int) (rgb[c] * 255.9999));
        return bytes;
    }

    @Test
    void skyEndsDarkAndNeutralAndStarsWhite() {
        List<Plane> planes = List.of(channel(900, 1, 1), channel(1500, 0.5, 2), channel(700, 0.8, 3));
        Stretch stretch = Stretch.of(planes);
        assertThat(stretch.channels().get(1).gain() / stretch.channels().get(0).gain())
                .isCloseTo(2, within(0.3));
        List<Plane> shown = stretch.apply(planes);
        for (Plane plane : shown) {
            assertThat(mean(plane)).isBetween(0.08, 0.18);
        }
        assertThat(mean(shown.get(1))).isCloseTo(mean(shown.get(0)), within(0.02));
        float[] nebula = {905 + 60, 1500 + 30, 700 + 48};
        stretch.tone(nebula);
        assertThat(nebula[0]).isBetween(0.25f, 0.8f);
    }

    private static Plane channel(double sky, double response, long noiseSeed) {
        SimulatedFrame frame =
                new SimulatedFrame(480, 320, 31).stars(300, 2.5, 60).multiply((x, y) -> response);
        Random noise = new Random(noiseSeed);
        return frame.sky(sky, 0, 0).add((x, y) -> 4 * noise.nextGaussian()).toFloats();
    }

    private static double mean(Plane plane) {
        double sum = 0;
        for (int y = 0; y < plane.height(); y++) {
            for (int x = 0; x < plane.width(); x++) {
                sum += plane.at(x, y);
            }
        }
        return sum / plane.width() / plane.height();
    }

    @Test
    void oddPlanesNeverThrow() {
        for (float fill : new float[] {0, 5, Float.NaN, Float.POSITIVE_INFINITY}) {
            for (int[] size : new int[][] {{1, 1}, {1, 50}, {50, 1}, {30, 30}}) {
                float[] pixels = new float[size[0] * size[1]];
                Arrays.fill(pixels, fill);
                Plane plane = Plane.of(size[0], size[1], pixels);
                Plane shown = Stretch.of(List.of(plane)).apply(List.of(plane)).get(0);
                assertThat(shown.at(0, 0)).isBetween(0f, 1f);
                assertThat(Stretch.of(List.of(plane, plane, plane)).apply(List.of(plane, plane, plane)))
                        .hasSize(3);
            }
        }
    }

    /** The same light in two exposures, one twice as long and over a brighter sky. */
    @Test
    void alikeTheSameLightIsTheSameGreyAndTheSkyAsWell() {
        Stretch one = new Stretch(List.of(new Stretch.Channel(500, 1)), 45, 20, 3000, 10);
        Stretch two = new Stretch(List.of(new Stretch.Channel(1700, 1)), 62, 30, 7000, 14);
        List<Stretch> alike = Stretch.alike(List.of(one, two), new double[] {1, 0.5});
        for (double light : new double[] {0, 40, 300, 2000}) {
            float[] first = {(float) (500 + light)};
            float[] second = {(float) (1700 + 2 * light)};
            alike.get(0).tone(first);
            alike.get(1).tone(second);
            assertThat(second[0]).isCloseTo(first[0], within(1e-6f));
        }
        assertThat(alike.get(1).noise()).isEqualTo(7);
    }
}
