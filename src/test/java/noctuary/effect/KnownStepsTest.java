package noctuary.effect;

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

    private static void assertNear(Amount amount, double expected, Offset<Double> tolerance) {
        assertThat(amount.why()).isEmpty();
        assertThat(amount.value().getAsDouble()).isCloseTo(expected, tolerance);
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

    /** Standard error of a median of nine over that of one value: 1.22267 / 3, exact (order statistics). */
    @Test
    void medianSmoothing() {
        Effect effect = PlantedSky.effect(origin, Steps.stretch(Steps.median3(origin), 40, 0.15));
        assertNear(effect.noiseRatio(1), 1.22267 / 3, share(1.22267 / 3, 0.05));
    }

    @Test
    void sharpening() {
        float[] sharp = Steps.sharpen(origin, 1.5, 0.8);
        Effect effect = PlantedSky.effect(origin, Steps.stretch(sharp, 20, 0.25));
        double[] k = Steps.kernel(1.5);
        double middle = k[k.length / 2] * k[k.length / 2];
        double grown = Math.sqrt(1.8 * 1.8 - 2 * 1.8 * 0.8 * middle + 0.64 * Steps.left(1.5) * Steps.left(1.5));
        assertNear(effect.noiseRatio(1), grown, share(grown, 0.05));
        assertThat(effect.fwhmRatio().value().getAsDouble()).isLessThan(0.9);
    }

    /** Five per cent of each star's height taken off between 2.25 and 2.75 star widths. */
    @Test
    void darkRings() {
        float[] picture = Steps.stretch(origin, 20, 0.25);
        for (double[] star : sky.stars()) {
            double height = picture[(int) Math.rint(star[1]) * PlantedSky.SIDE + (int) Math.rint(star[0])] - 0.25;
            for (int i = 0; i < picture.length; i++) {
                double apart = Math.hypot(i % PlantedSky.SIDE - star[0], i / PlantedSky.SIDE - star[1]);
                boolean within = apart > 2.25 * PlantedSky.FWHM && apart < 2.75 * PlantedSky.FWHM;
                picture[i] -= within ? (float) (0.05 * height) : 0;
            }
        }
        assertNear(PlantedSky.effect(origin, picture).darkRingPercent(), 5, within(1.0));
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

    /** Normal tail: 2.275 % lie more than two sigmas below. */
    @Test
    void cuttingTheBackground() {
        float[] origin = new PlantedSky(6, 100, 7, 0).pixels();
        float[] picture = new float[origin.length];
        long black = 0;
        long white = 0;
        for (int i = 0; i < picture.length; i++) {
            picture[i] = Math.max(0, Math.min(1, (origin[i] - 980) / 1500));
            black += picture[i] == 0 ? 1 : 0;
            white += picture[i] == 1 ? 1 : 0;
        }
        Effect effect = PlantedSky.effect(origin, picture);
        assertThat(effect.clippedBlackPercent()).isCloseTo(100.0 * black / picture.length, within(0.001));
        assertThat(effect.clippedWhitePercent()).isCloseTo(100.0 * white / picture.length, within(0.001));
        assertNear(effect.backgroundCutPercent(), 2.275, within(0.1));
        assertNear(effect.noiseRatio(1), 1, within(0.02));
    }

    @Test
    void starsTakenOffAndStarsPutIn() {
        float[] linear = sky.pixels();
        int taken = 0;
        for (int i = 0; i < sky.stars().size(); i += 5) {
            PlantedSky.add(linear, sky.stars().get(i), -1);
            taken++;
        }
        for (double[] place : sky.emptyPlaces(12)) {
            PlantedSky.add(linear, new double[] {place[0], place[1], PlantedSky.flux(30)}, 1);
        }
        Effect effect = PlantedSky.effect(origin, Steps.stretch(linear, 40, 0.15));
        StarFates fates = effect.fates().get();
        double share = 100.0 * fates.lost() / (fates.lost() + fates.kept());
        assertThat(share).isCloseTo(100.0 * taken / sky.stars().size(), within(5.0));
        assertThat(fates.invented()).isEqualTo(12);
    }

    @Test
    void aGreenBackgroundIsToldInPercent() {
        float[] grey = Steps.stretch(origin, 40, 0.15);
        float[] green = grey.clone();
        for (int i = 0; i < green.length; i++) {
            green[i] *= 1.03f;
        }
        Effect effect = PlantedSky.effect(origin, grey, green, grey);
        assertThat(effect.castPercent().get(1)).isCloseTo(100 * (1.03 / 1.01 - 1), within(0.05));
        assertThat(effect.castPercent().get(0)).isCloseTo(100 * (1 / 1.01 - 1), within(0.05));
    }
}
