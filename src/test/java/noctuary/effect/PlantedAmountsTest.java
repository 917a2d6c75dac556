package noctuary.effect;

import static noctuary.effect.PlantedSky.assertNear;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Harm of a planted amount, zero among them, comes back as that amount. */
class PlantedAmountsTest {
    private static final int SIDE = PlantedSky.SIDE;

    private static final PlantedSky SKY = new PlantedSky(5, 196, 7);
    private static final PlantedSky BRIGHT = new PlantedSky(31, 196, 7, 400);

    /** The picture with {@code percent} of each star's height added between two distances, in star widths. */
    private static float[] around(PlantedSky sky, float[] picture, double percent, double from, double to) {
        float[] out = picture.clone();
        for (double[] star : sky.stars()) {
            int at = (int) Math.rint(star[1]) * SIDE + (int) Math.rint(star[0]);
            double height = picture[at] - 0.25;
            for (int i = 0; i < out.length; i++) {
                double apart = Math.hypot(i % SIDE - star[0], i / SIDE - star[1]) / PlantedSky.FWHM;
                out[i] += apart > from && apart < to ? (float) (percent / 100 * height) : 0;
            }
        }
        return out;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 2, 5, 10})
    void darkRings(double percent) {
        float[] plain = Steps.stretch(SKY.pixels(), 20, 0.25);
        Effect effect = PlantedSky.effect(SKY.pixels(), around(SKY, plain, -percent, 2.25, 2.75));
        assertNear(effect.darkRingPercent(), percent, within(Math.max(0.3, 0.1 * percent)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 2, 5})
    void halos(double percent) {
        float[] plain = Steps.stretch(SKY.pixels(), 20, 0.25);
        Effect effect = PlantedSky.effect(SKY.pixels(), around(SKY, plain, percent, 2.25, 4.25));
        assertNear(effect.haloPercent(), percent, within(Math.max(0.3, 0.1 * percent)));
        assertNear(effect.darkRingPercent(), 0, within(0.3));
    }

    /** Light of the ripples, 6 px long: exp(-(2 π σ / 6)²) of its power is left by a Gaussian. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 1, 1.5})
    void detailUnderAGaussian(double sigma) {
        PlantedSky sky = new PlantedSky(8, 64, 20, (x, y) -> 800 * PlantedSky.rippled(x, y, 0.3));
        float[] smooth = sigma == 0 ? sky.pixels() : Steps.gaussian(sky.pixels(), sigma);
        Effect effect = PlantedSky.effect(sky.pixels(), Steps.stretch(smooth, 5, 0.15));
        double left = Math.exp(-Math.pow(2 * Math.PI * sigma / 6, 2));
        assertNear(effect.detailKept(), left, within(0.02));
    }

    /** Percent of the background by which each colour is multiplied. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0", "0, 3, 0", "-5, 0, 2", "10, -4, 0"})
    void colourOfTheBackground(double red, double green, double blue) {
        float[] grey = Steps.stretch(BRIGHT.pixels(), 40, 0.15);
        double[] percent = {red, green, blue};
        float[][] planes = new float[3][];
        for (int c = 0; c < 3; c++) {
            planes[c] = grey.clone();
            for (int i = 0; i < grey.length; i++) {
                planes[c][i] *= (float) (1 + percent[c] / 100);
            }
        }
        Effect effect = PlantedSky.effect(BRIGHT.pixels(), planes);
        double mean = 1 + (red + green + blue) / 300;
        for (int c = 0; c < 3; c++) {
            assertThat(effect.castPercent().get(c)).isCloseTo(100 * ((1 + percent[c] / 100) / mean - 1), within(0.05));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "10, 0", "4, 5", "2, 12"})
    void starsTakenOffAndStarsPutIn(int every, int planted) {
        for (PlantedSky sky : new PlantedSky[] {SKY, BRIGHT}) {
            float[] linear = sky.pixels();
            int taken = 0;
            for (int i = 0; every > 0 && i < sky.stars().size(); i += every) {
                PlantedSky.add(linear, sky.stars().get(i), -1);
                taken++;
            }
            for (double[] place : sky.emptyPlaces(planted)) {
                PlantedSky.add(linear, new double[] {place[0], place[1], PlantedSky.flux(30)}, 1);
            }
            StarFates fates = PlantedSky.effect(sky.pixels(), Steps.stretch(linear, 40, 0.15))
                    .fates()
                    .orElseThrow();
            double share = 100.0 * fates.lost() / (fates.lost() + fates.kept());
            assertThat(share).isCloseTo(100.0 * taken / sky.stars().size(), within(5.0));
            assertThat(fates.invented()).isEqualTo(planted);
        }
    }

    /** Sigmas below the sky at which black is put, and the normal tail there; without and with a nebula. */
    @ParameterizedTest
    @CsvSource({"3, 0.13499, 400", "2.5, 0.62097, 400", "2, 2.27501, 400", "1.5, 6.68072, 400"})
    void theCutBackground(double sigmas, double percent, double highest) {
        for (double height : new double[] {0, 0.15 * highest, highest}) {
            float[] origin = new PlantedSky(6, 100, 7, height).pixels();
            float[] picture = new float[origin.length];
            long black = 0;
            for (int i = 0; i < picture.length; i++) {
                double cut = PlantedSky.LEVEL - sigmas * PlantedSky.SIGMA;
                picture[i] = (float) Math.max(0, Math.min(1, (origin[i] - cut) / 1500));
                black += picture[i] == 0 ? 1 : 0;
            }
            Effect effect = PlantedSky.effect(origin, picture);
            assertThat(effect.clippedBlackPercent()).isCloseTo(100.0 * black / picture.length, within(0.001));
            assertNear(effect.backgroundCutPercent(), percent, within(0.1));
        }
    }

    @Test
    void nothingIsCutWhereNothingIsBlack() {
        Effect effect = PlantedSky.effect(SKY.pixels(), Steps.stretch(SKY.pixels(), 5, 0.25));
        assertThat(effect.clippedBlackPercent()).isZero();
        assertNear(effect.backgroundCutPercent(), 0, within(0.0));
    }
}
