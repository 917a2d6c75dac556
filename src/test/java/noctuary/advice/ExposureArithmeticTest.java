package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Time, depth and single exposures; values worked out by hand from the formulas in the Javadoc. */
class ExposureArithmeticTest {
    @ParameterizedTest
    @CsvSource({"0.01, 49.7512", "0.02, 24.7525", "0.05, 9.75610", "0.1, 4.76190", "0.2, 2.27273", "0.25, 1.77778"})
    void theConstantOfTheShortestExposure(double growth, double expected) {
        assertThat(SubExposure.constant(growth)).isCloseTo(expected, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "3, 0.5, 0.05, 175.610",
        "3, 0.5, 0.1, 85.714",
        "1.5, 2, 0.05, 10.976",
        "1.5, 2, 0.1, 5.357",
        "7, 0.2, 0.05, 2390.24",
        "7, 0.2, 0.1, 1166.67"
    })
    void theShortestExposure(double readNoise, double rate, double growth, double expected) {
        double seconds = SubExposure.shortestSeconds(readNoise, rate, growth).getAsDouble();
        assertThat(seconds).isCloseTo(expected, within(0.005));
        assertThat(SubExposure.growth(readNoise, rate, seconds)).isCloseTo(growth, within(1e-12));
    }

    @Test
    void withoutLightThereIsNoShortest() {
        assertThat(SubExposure.shortestSeconds(3, 0, 0.05)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.5, 25400", "1.25594, 55637.7", "3.15479, 131591.5"})
    void secondsForARatioUnderBrighterSkies(double sky, double expected) {
        assertThat(EqualDepth.seconds(10, 0.05, sky, 0.01, 3, 120)).isCloseTo(expected, within(1e-5 * expected));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1.58489", "1, 2.51189", "1.5, 3.98107", "2, 6.30957", "3, 15.84893"})
    void aSkyMagnitudesBrighterWantsThatMuchMoreTime(double magnitudes, double expected) {
        double brightness = EqualDepth.brightness(magnitudes);
        assertThat(EqualDepth.timeRatio(brightness, 1)).isCloseTo(expected, within(5e-6));
    }

    @Test
    void twiceTheApertureIsASixteenthOfTheTimeUnderTheSameNoise() {
        assertThat(EqualDepth.timeRatio(1, 4)).isEqualTo(1 / 16.0);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.3763", "4, 0.7526", "10, 1.25"})
    void depthGrowsWithTheLogarithmOfTime(double ratio, double magnitudes) {
        assertThat(EqualDepth.magnitudesForTime(ratio)).isCloseTo(magnitudes, within(5e-5));
        assertThat(EqualDepth.timeForMagnitudes(EqualDepth.magnitudesForTime(ratio)))
                .isCloseTo(ratio, within(1e-9));
    }

    @Test
    void theFloorIsFoundAgain() {
        double[] frames = {1, 2, 4, 8, 16, 32};
        double[] variance = new double[frames.length];
        for (int i = 0; i < frames.length; i++) {
            variance[i] = 100 / frames[i] + 4;
        }
        FloorModel model = FloorModel.fit(frames, variance);
        assertThat(model.perFrame()).isCloseTo(100, within(1e-9));
        assertThat(model.floor()).isCloseTo(4, within(1e-9));
        assertThat(model.breakFrames().getAsDouble()).isCloseTo(25, within(1e-9));
        assertThat(model.sigma(32)).isCloseTo(2.669270, within(1e-6));
    }

    @Test
    void noiseThatFallsFasterThanTheRootHasNoFloor() {
        FloorModel model = FloorModel.fit(new double[] {1, 4}, new double[] {100, 20});
        assertThat(model.floor()).isZero();
        assertThat(model.breakFrames()).isEmpty();
    }

    /** 10 counts in a frame, 5 instead of 2.5 in sixteen: a = 80 and b = 20, so half of it stays from 4 frames on. */
    @Test
    void aStackThatStopsGettingQuieterSaysWhere() {
        NoiseGrowth growth = new NoiseGrowth(16, 10, 5, 0.1);
        assertThat(growth.hasFloor()).isTrue();
        assertThat(growth.model().breakFrames().getAsDouble()).isCloseTo(4, within(1e-9));
        assertThat(growth.sentence()).contains("from about 4 frames on");
    }

    @Test
    void aStackQuieterThanTheRootOfTimeWasSmoothed() {
        assertThat(new NoiseGrowth(16, 10, 1.2, 0.1).sentence()).contains("interpolated or smoothed");
    }
}
