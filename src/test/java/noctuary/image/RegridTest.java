package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RegridTest {
    private static Plane painted(int width, int height, DoubleBinaryOperator value) {
        float[] pixels = new float[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (float) value.applyAsDouble(i % width, i / width);
        }
        return Plane.of(width, height, pixels);
    }

    private static Affine turned(double degrees, double scale, double x, double y) {
        double c = scale * Math.cos(Math.toRadians(degrees));
        double s = scale * Math.sin(Math.toRadians(degrees));
        return new Affine(c, -s, x, s, c, y);
    }

    @Test
    void theSameGridGivesTheSamePixels() {
        Random random = new Random(1);
        Plane plane = painted(301, 203, (x, y) -> random.nextFloat());
        Plane same = Regrid.onto(plane, Affine.SAME, 301, 203);
        for (int i = 0; i < 301 * 203; i++) {
            assertThat(same.at(i % 301, i / 301)).isEqualTo(plane.at(i % 301, i / 301));
        }
    }

    /** Keys 1981: with a = -1/2 the interpolation is exact for polynomials of second degree. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 17, 90, 133.3, 180, 271})
    void parabolasAreCarriedOverExactly(double degrees) {
        DoubleBinaryOperator parabola = (x, y) -> 3 + 0.02 * x - 0.01 * y + 4e-4 * x * x - 3e-4 * y * y + 1e-4 * x * y;
        Plane plane = painted(400, 400, parabola);
        Affine map = turned(degrees, 0.8, 200.3, 199.6).after(Affine.shift(-80, -60));
        Plane seen = Regrid.onto(plane, map, 160, 120);
        for (int y = 0; y < 120; y += 7) {
            for (int x = 0; x < 160; x += 7) {
                assertThat((double) seen.at(x, y))
                        .isCloseTo(parabola.applyAsDouble(map.x(x, y), map.y(x, y)), within(2e-4));
            }
        }
    }

    @Test
    void shrinkingAveragesNoiseAsAMeanDoes() {
        Random random = new Random(2);
        Plane noise = painted(1200, 1200, (x, y) -> 100 + random.nextGaussian());
        Plane small = Regrid.onto(noise, Affine.enlarged(4), 300, 300);
        double sum = 0;
        double squares = 0;
        int count = 0;
        for (int y = 10; y < 290; y++) {
            for (int x = 10; x < 290; x++) {
                double value = small.at(x, y) - 100;
                sum += value;
                squares += value * value;
                count++;
            }
        }
        assertThat(sum / count).isCloseTo(0, within(0.01));
        assertThat(Math.sqrt(squares / count))
                .as("1/4 for a block mean; the sum of the squared weights of the widened kernel is a little less")
                .isBetween(0.17, 0.25);
    }

    /** Keys's kernel pixel by pixel, with positions that are not rounded: 1/2048 px of a slope of 0.5 a pixel, both ways. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 1.05, 1.6, 3.3})
    void pixelsAreWhatTheKernelGivesOneByOne(double scale) {
        Random random = new Random(4);
        Plane plane = painted(300, 300, (x, y) -> 10 + 0.25 * random.nextDouble());
        Affine map = turned(21, scale, 150.2, 149.7).after(Affine.shift(-20, -20));
        Plane seen = Regrid.onto(plane, map, 40, 40);
        for (int i = 0; i < 1600; i++) {
            double expected = slow(plane, map.x(i % 40, i / 40), map.y(i % 40, i / 40), scale < 1 ? 1 : scale);
            assertThat((double) seen.at(i % 40, i / 40)).isCloseTo(expected, within(5e-4));
        }
    }

    private static double slow(Plane plane, double sx, double sy, double step) {
        double sum = 0;
        double all = 0;
        for (int y = (int) Math.ceil(sy - 2 * step); y <= sy + 2 * step; y++) {
            for (int x = (int) Math.ceil(sx - 2 * step); x <= sx + 2 * step; x++) {
                double weight = keys(Math.abs(x - sx) / step) * keys(Math.abs(y - sy) / step);
                sum += weight * plane.at(x, y);
                all += weight;
            }
        }
        return sum / all;
    }

    private static double keys(double t) {
        return t < 1 ? 1.5 * t * t * t - 2.5 * t * t + 1 : -0.5 * t * t * t + 2.5 * t * t - 4 * t + 2;
    }

    @Test
    void beyondTheEdgesNothingIsKnown() {
        Plane plane = painted(50, 40, (x, y) -> 7);
        Plane seen = Regrid.onto(plane, Affine.shift(-10, -5), 80, 60);
        assertThat(seen.at(9, 20)).isNaN();
        assertThat(seen.at(10, 5)).isEqualTo(7);
        assertThat(seen.at(59, 44)).isEqualTo(7);
        assertThat(seen.at(60, 20)).isNaN();
        assertThat(seen.at(30, 45)).isNaN();
    }

    @Test
    void storedNumbersAndFloatsGiveTheSame() {
        short[] stored = new short[90 * 70];
        float[] floats = new float[stored.length];
        Random random = new Random(3);
        for (int i = 0; i < stored.length; i++) {
            stored[i] = (short) random.nextInt(1 << 16);
            floats[i] = 32768 + stored[i];
        }
        Affine map = turned(33, 1.2, 40, -10);
        Plane one = Regrid.onto(Plane.ofStored(90, 70, stored, 32768, 1), map, 60, 60);
        Plane two = Regrid.onto(Plane.of(90, 70, floats), map, 60, 60);
        for (int i = 0; i < 3600; i++) {
            assertThat(Float.valueOf(one.at(i % 60, i / 60))).isEqualTo(Float.valueOf(two.at(i % 60, i / 60)));
        }
    }

    @Test
    void thereAndBackIsWhereItBegan() {
        Affine map = turned(71, 1.7, 12, -30);
        Affine back = map.inverse().after(map);
        assertThat(back.x(3, 4)).isCloseTo(3, within(1e-12));
        assertThat(back.y(3, 4)).isCloseTo(4, within(1e-12));
        assertThat(Affine.enlarged(2).x(0, 0)).as("the middle of two pixels").isEqualTo(0.5);
    }
}
