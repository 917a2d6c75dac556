package noctuary.stars;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import noctuary.image.Plane;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Looking at half the resolution first must find what the slow way finds, which filters every pixel. */
class DetectorTest {
    private static final int WIDTH = 1021;
    private static final int HEIGHT = 767;
    private static final double SIGMAS = 5.5;

    private static Plane frame(double fwhm, int stars) {
        return new SkySimulator(WIDTH, HEIGHT, 7)
                .shape(StarShape.constant(fwhm, 0.2, 20, 3))
                .stars(stars, 5, 300, 4)
                .hotPixels(80)
                .frame()
                .plane();
    }

    private static List<Detection> everyPixelFiltered(Plane plane, BackgroundMesh mesh, PeakTest test) {
        return new FilteredTile(plane, Sampling.ALL, mesh, test, WIDTH).search(0, 0, WIDTH, HEIGHT);
    }

    private static Set<Long> places(List<Detection> detections) {
        Set<Long> places = new HashSet<>();
        detections.forEach(d -> places.add((long) d.y() * WIDTH + d.x()));
        return places;
    }

    private static PeakTest test(double fwhm) {
        double shown = Math.sqrt(fwhm * fwhm + 0.46);
        return new PeakTest(
                MatchedFilter.of(shown, Sampling.ALL), new PointTest(Sampling.ALL, 0.9 * fwhm), SIGMAS, 0.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.8, 2.4, 3, 4.5, 7})
    void findsWhatFilteringEveryPixelFinds(double fwhm) {
        Plane plane = frame(fwhm, 300);
        BackgroundMesh mesh = BackgroundMesh.of(plane, Sampling.ALL, 64);
        Set<Long> slow = places(everyPixelFiltered(plane, mesh, test(fwhm)));
        Set<Long> found = places(new Detector(plane, Sampling.ALL, mesh, test(fwhm)).find(tile -> true));
        assertThat(found).hasSizeGreaterThan(200);
        Set<Long> missed = new HashSet<>(slow);
        missed.removeAll(found);
        assertThat(missed).hasSizeLessThanOrEqualTo(slow.size() / 200);
        found.removeAll(slow);
        assertThat(found).isEmpty();
    }

    @Test
    void losesNoneWhereStarsCrowdWithinElevenPixels() {
        Plane plane = frame(3, 6000);
        BackgroundMesh mesh = BackgroundMesh.of(plane, Sampling.ALL, 64);
        Set<Long> slow = places(everyPixelFiltered(plane, mesh, test(3)));
        Set<Long> found = places(new Detector(plane, Sampling.ALL, mesh, test(3)).find(tile -> true));
        assertThat(found).hasSizeGreaterThan(3000).isEqualTo(slow);
    }

    @Test
    void losesOneInFiftyAtMostWhereStarsStandWithinTwentyPixels() {
        Plane plane = frame(3, 2400);
        BackgroundMesh mesh = BackgroundMesh.of(plane, Sampling.ALL, 64);
        Set<Long> slow = places(everyPixelFiltered(plane, mesh, test(3)));
        Set<Long> found = places(new Detector(plane, Sampling.ALL, mesh, test(3)).find(tile -> true));
        slow.removeAll(found);
        assertThat(slow).hasSizeLessThanOrEqualTo(found.size() / 50);
    }

    @Test
    void eachPeakCountsOnce() {
        Plane plane = frame(3, 2000);
        BackgroundMesh mesh = BackgroundMesh.of(plane, Sampling.ALL, 64);
        List<Detection> found = new Detector(plane, Sampling.ALL, mesh, test(3)).find(tile -> true);
        assertThat(places(found)).hasSameSizeAs(found);
    }
}
