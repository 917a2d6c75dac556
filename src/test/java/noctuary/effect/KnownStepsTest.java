package noctuary.effect;

import static noctuary.effect.PlantedSky.assertNear;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Steps of known strength come back with the right numbers. */
class KnownStepsTest {
    private static PlantedSky sky;
    private static float[] origin;

    @BeforeAll
    static void plant() {
        sky = new PlantedSky(5, 196, 7);
        origin = sky.pixels();
    }

    private static Offset<Double> share(double expected, double share) {
        return within(expected * share);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 40, 200})
    void aStretchIsFoundAndChangesNothingElse(double strength) {
        Effect effect = PlantedSky.effect(origin, Steps.stretch(origin, strength, 0.15));
        assertThat(effect.whyNot()).isEmpty();
        assertNear(effect.stretch().get().strength(), strength, share(strength, 0.05));
        assertThat(effect.stretch().get().background()).isCloseTo(0.15, within(0.01));
        assertNear(effect.noiseRatio(1), 1, within(0.02));
        assertNear(effect.noiseRatio(8), 1, within(0.02));
        assertNear(effect.fwhmRatio(), 1, within(0.01));
        assertNear(effect.similarity(), 1, within(0.002));
        assertThat(effect.fates().get().lost()).isZero();
        assertThat(effect.fates().get().invented()).isZero();
        assertThat(effect.fates().get().kept()).isGreaterThan(170);
        assertNear(effect.darkRingPercent(), 0, within(0.3));
    }

    /** What is left of white noise: sum of the squared kernel (handbook's table: 0.28212 for sigma 1). */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1.0, 1.5})
    void gaussianSmoothing(double sigma) {
        float[] smooth = Steps.gaussian(origin, sigma);
        Effect effect = PlantedSky.effect(origin, Steps.stretch(smooth, 40, 0.15));
        double left = Steps.left(sigma);
        assertNear(effect.noiseRatio(1), left, share(left, 0.05));
        double wider = Steps.smoothedFwhm(PlantedSky.FWHM, PlantedSky.BETA, sigma) / PlantedSky.FWHM;
        assertNear(effect.fwhmRatio(), wider, share(wider, 0.03));
        assertThat(effect.fates().get().lost()).isZero();
        assertThat(effect.neighbours().after().value().getAsDouble())
                .isGreaterThan(effect.neighbours().before().value().getAsDouble() + 0.3);
    }

    /** Smoothing after the stretch, as a denoiser at the end of a recipe does. */
    @Test
    void gaussianSmoothingOfTheStretchedPicture() {
        Effect effect = PlantedSky.effect(origin, Steps.gaussian(Steps.stretch(origin, 40, 0.15), 1));
        assertNear(effect.noiseRatio(1), Steps.left(1), share(Steps.left(1), 0.05));
        assertThat(effect.fates().get().lost()).isZero();
    }

    /** The black point 0.6 of the smoothed noise's sigmas below the sky: a quarter of the background is black. */
    @Test
    void noiseUnderACutBackground() {
        float[] smooth = Steps.gaussian(origin, 1);
        float[] picture = new float[origin.length];
        for (int i = 0; i < picture.length; i++) {
            picture[i] = Math.max(0, Math.min(1, (smooth[i] - 998.3f) / 600));
        }
        Effect effect = PlantedSky.effect(origin, picture);
        assertThat(effect.backgroundCutPercent().value().getAsDouble()).isBetween(20.0, 35.0);
        assertNear(effect.noiseRatio(1), Steps.left(1), share(Steps.left(1), 0.05));
        assertThat(effect.noiseRatio(8).value()).isEmpty();
        assertThat(effect.noiseRatio(8).why()).contains("cut to black");
    }
}
