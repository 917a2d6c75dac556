package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ResampleTest {
    private static Plane counting(int width, int height) {
        float[] pixels = new float[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = i;
        }
        return Plane.of(width, height, pixels);
    }

    @Test
    void wholeFactorsAreBlockMeans() {
        Plane half = Resample.area(counting(4, 2), 2, 1);
        assertThat(half.at(0, 0)).isEqualTo((0 + 1 + 4 + 5) / 4f);
        assertThat(half.at(1, 0)).isEqualTo((2 + 3 + 6 + 7) / 4f);
    }

    @Test
    void partlyCoveredPixelsCountByTheirArea() {
        Plane two = Resample.area(Plane.of(3, 1, new float[] {3, 6, 9}), 2, 1);
        assertThat(two.at(0, 0)).isCloseTo((3 + 0.5f * 6) / 1.5f, within(1e-6f));
        assertThat(two.at(1, 0)).isCloseTo((0.5f * 6 + 9) / 1.5f, within(1e-6f));
    }

    @Test
    void meanIsKept() {
        Plane plane = counting(101, 67);
        Plane small = Resample.area(plane, 13, 9);
        double sum = 0;
        for (int i = 0; i < 13 * 9; i++) {
            sum += small.at(i % 13, i / 13);
        }
        assertThat(sum / (13 * 9)).isCloseTo((101 * 67 - 1) / 2.0, within(1e-2));
    }

    @Test
    void missingPixelsAreLeftOut() {
        float gap = Float.NaN;
        Plane half = Resample.area(Plane.of(4, 2, new float[] {1, gap, gap, gap, 3, 5, gap, gap}), 2, 1);
        assertThat(half.at(0, 0)).isEqualTo(3);
        assertThat(half.at(1, 0)).isNaN();
    }

    @Test
    void nothingIsEnlarged() {
        assertThat(Resample.toWidth(counting(5, 3), 100).width()).isEqualTo(5);
        assertThat(Resample.toWidth(counting(1000, 1), 10).height()).isEqualTo(1);
    }

    @Test
    void superPixelsSortTheColours() {
        float[] pixels = {10, 20, 10, 20, 30, 12, 30, 12};
        List<Plane> rgb = Resample.colours(Plane.of(4, 2, pixels), Mosaic.GRBG, 100);
        assertThat(rgb).extracting(p -> p.at(1, 0)).containsExactly(20f, 11f, 30f);
        assertThat(rgb.get(0).width()).isEqualTo(2);
        assertThat(Resample.colours(counting(1, 7), Mosaic.RGGB, 100)).hasSize(1);
    }
}
