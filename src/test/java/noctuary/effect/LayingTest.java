package noctuary.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Plane;
import noctuary.image.Resample;
import noctuary.stars.StarField;
import org.junit.jupiter.api.Test;

/** Versions that do not lie pixel on pixel on what they came from, or not at all. */
class LayingTest {
    private static final int SIDE = PlantedSky.SIDE;

    private final PlantedSky sky = new PlantedSky(9, 144, 8);
    private final float[] origin = sky.pixels();

    private Effect against(Plane picture) {
        StarField.Conditions plain = new StarField.Conditions(Optional.empty(), OptionalDouble.empty());
        Side side = new Side(
                picture.width(),
                picture.height(),
                1,
                StarField.measure(picture, plain).stars());
        return Effect.measure(
                PlantedSky.side(origin),
                () -> new Pixels(List.of(PlantedSky.plane(origin)), Double.POSITIVE_INFINITY, false),
                side,
                () -> new Pixels(List.of(picture), 1, false));
    }

    /** Turned by a quarter, flipped and cut out: nothing is resampled, so nothing may change. */
    @Test
    void aTurnedAndCroppedPictureIsComparedPixelOnPixel() {
        float[] picture = Steps.stretch(origin, 40, 0.15);
        int side = 560;
        float[] turned = new float[side * side];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = picture[(i % side + 30) * SIDE + i / side + 50];
        }
        Effect effect = against(Plane.of(side, side, turned));
        assertThat(effect.laid().orElseThrow().resampled()).isFalse();
        assertThat(effect.laid().orElseThrow().mirrored()).isTrue();
        assertThat(effect.noiseRatio(1).value().getAsDouble()).isCloseTo(1, within(0.02));
        assertThat(effect.similarity().value().getAsDouble()).isCloseTo(1, within(0.005));
        assertThat(effect.fates().orElseThrow().lost()).isZero();
    }

    /** Halved by area: fine noise would look calmer by the averaging alone. */
    @Test
    void aSmallerPictureTellsNoiseAtLargeSizesOnly() {
        Plane picture = Resample.area(PlantedSky.plane(Steps.stretch(origin, 40, 0.15)), SIDE / 2, SIDE / 2);
        Effect effect = against(picture);
        assertThat(effect.laid().orElseThrow().resampled()).isTrue();
        assertThat(effect.laid().orElseThrow().scale()).isCloseTo(0.5, within(0.001));
        assertThat(effect.noiseRatio(1).value()).isEmpty();
        assertThat(effect.noiseRatio(1).why()).contains("resized");
        assertThat(effect.noiseRatio(8).value().getAsDouble()).isCloseTo(1, within(0.05));
        assertThat(effect.fates().orElseThrow().lost()).isZero();
    }

    @Test
    void aPictureOfAnotherFieldIsRefused() {
        float[] other = Steps.stretch(new PlantedSky(77, 100, 8).pixels(), 40, 0.15);
        Effect effect = against(PlantedSky.plane(other));
        assertThat(effect.laid()).isEmpty();
        assertThat(effect.whyNot()).contains("stars do not fall");
        assertThat(effect.noiseRatio(1).value()).isEmpty();
        assertThat(effect.fwhmRatio().why()).isEqualTo(effect.whyNot());
    }

    /** A gradient taken off after the stretch: one grey level of the origin has many values in the picture. */
    @Test
    void aGradientTakenOffLeavesNoSingleStretch() {
        float[] picture = Steps.stretch(origin, 40, 0.4);
        for (int i = 0; i < picture.length; i++) {
            picture[i] -= (float) (0.3 * (i % SIDE) / SIDE);
        }
        Effect effect = against(PlantedSky.plane(picture));
        assertThat(effect.stretch()).isEmpty();
        assertThat(effect.whyNot()).contains("gradient");
        assertThat(effect.laid()).isPresent();
    }
}
