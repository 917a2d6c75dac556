package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import noctuary.image.Affine;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planted truth: the same stars, turned, enlarged and more brightly lit. */
class SkyMatchTest {
    @TempDir
    static Path folder;

    private static final Affine TO_OTHER = new Affine(0, 1.25, 12, -1.25, 0, 880);
    private static Measurement reference;
    private static Measurement other;

    @BeforeAll
    static void measure() {
        reference = Meter.measure(frame(700, 500, 5, Affine.SAME, 1).write(folder.resolve("a.fits")));
        other = Meter.measure(frame(640, 890, 6, TO_OTHER, 2.5).write(folder.resolve("b.fits")));
    }

    private static FrameDraft frame(int width, int height, long seed, Affine map, double light) {
        java.util.Random random = new java.util.Random(11);
        SkySimulator sky = new SkySimulator(width, height, seed).shape(StarShape.constant(3, 0, 0, 3.5));
        for (int i = 0; i < 90; i++) {
            double x = 700 * random.nextDouble();
            double y = 500 * random.nextDouble();
            sky.light(map.x(x, y), map.y(x, y), light * 4000 * Math.exp(2.5 * random.nextDouble()));
        }
        return FrameDraft.of(sky.frame().plane());
    }

    @Test
    void placesAndLightComeBack() {
        SkyMatch match = SkyMatch.of(other, reference).orElseThrow();
        assertThat(match.matched()).isGreaterThan(50);
        assertThat(match.scale()).isCloseTo(1 / 1.25, within(1e-3));
        for (double[] place : List.of(new double[] {50, 60}, new double[] {600, 90}, new double[] {350, 450})) {
            double x = TO_OTHER.x(place[0], place[1]);
            double y = TO_OTHER.y(place[0], place[1]);
            assertThat(match.toReference().x(x, y)).isCloseTo(place[0], within(0.1));
            assertThat(match.toReference().y(x, y)).isCloseTo(place[1], within(0.1));
        }
        assertThat(match.light().orElseThrow())
                .as("2.5 times the light, over 1.25² times the area a pixel of the reference covers")
                .isCloseTo(1.25 * 1.25 / 2.5, within(0.03 * 0.625));
    }

    @Test
    void whatDoesNotMatchSaysWhy() {
        Measurement strange = Meter.measure(FrameDraft.stars(3, 99).write(folder.resolve("c.fits")));
        Measurement dark = Meter.measure(FrameDraft.empty(300, 200, 4).write(folder.resolve("d.fits")));
        assertThat(SkyMatch.of(strange, reference)).isEmpty();
        assertThat(SkyMatch.whyNot(strange, reference)).contains("better than chance");
        assertThat(SkyMatch.of(dark, reference)).isEmpty();
        assertThat(SkyMatch.whyNot(dark, reference)).contains("it takes six");
    }

    @Test
    void everyCornerAndTheMiddleHasAStarOfItsOwn() {
        List<Optional<SampleStars.Sample>> samples = SampleStars.of(reference);
        assertThat(samples).hasSize(5).allMatch(Optional::isPresent);
        SampleStars.Sample corner =
                samples.get(SampleStars.Place.LAST_RIGHT.ordinal()).orElseThrow();
        assertThat(corner.x()).isGreaterThan(500);
        assertThat(corner.y()).isGreaterThan(350);
        assertThat(corner.fwhmPx()).isCloseTo(3, within(0.4));
        assertThat(SampleStars.of(Meter.measure(FrameDraft.empty(300, 200, 4).write(folder.resolve("e.fits")))))
                .allMatch(Optional::isEmpty);
    }
}
