package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import noctuary.measure.NoiseOverTime;
import org.junit.jupiter.api.Test;

/** Ten counts of noise a frame, two to eight frames; what stays is put in by hand. */
class NoiseFallTest {
    @Test
    void noiseThatAveragesOutFalls() {
        NoiseFall fall = fall(10, 1, 0.05, 0.04);
        assertThat(fall.why()).isEqualTo(NoiseFall.Why.FALLS);
        assertThat(fall.sentence()).endsWith("So far the noise falls with the root of the time.");
        assertThat(fall.stopFrames()).isEmpty();
        assertThat(fall.stayingShare(8)).isZero();
    }

    /** As much stays as averages out in eight frames: half of the variance from 8 on, two thirds with 16. */
    @Test
    void aPatternThatStaysWithThePixelsIsTheSensors() {
        NoiseFall fall = fall(10, 1, 1, 1.4);
        assertThat(fall.why()).isEqualTo(NoiseFall.Why.SENSOR);
        assertThat(fall.stopFrames().getAsDouble()).isCloseTo(8, within(1e-9));
        assertThat(fall.stayingShare(8)).isCloseTo(0.5, within(1e-9));
        assertThat(fall.stayingShare(16)).isCloseTo(2 / 3.0, within(1e-9));
        assertThat(fall.sentence()).contains("from about 8 frames on", "a pattern of the sensor");
    }

    @Test
    void whatStaysWithTheStarsDoesNotPutDepthOutOfReach() {
        NoiseFall fall = fall(10, 1, 1, 0.3);
        assertThat(fall.why()).isEqualTo(NoiseFall.Why.SKY);
        assertThat(fall.stayingShare(8)).isZero();
    }

    @Test
    void withoutMovingThePointingNobodyCanTell() {
        NoiseFall fall = fall(0.4, 1, 1, 1);
        assertThat(fall.why()).isEqualTo(NoiseFall.Why.UNTOLD);
        assertThat(fall.sentence()).contains("shift the pointing between exposures");
    }

    @Test
    void laterFramesThatAreNoisierAreNamed() {
        NoiseFall fall = fall(10, 1.42, 0.05, 0.04);
        assertThat(fall.why()).isEqualTo(NoiseFall.Why.ROUGHER_SKY);
        assertThat(fall.sentence()).contains("by 42 %", "brighter or less clear");
    }

    private static NoiseFall fall(double moved, double rougher, double onSky, double onSensor) {
        return new NoiseFall(new NoiseOverTime(
                "L",
                moved,
                List.of(point(2, 1, 0), point(4, 1, 0), point(8, rougher, onSky)),
                10,
                0.1,
                onSky,
                onSensor));
    }

    private static NoiseOverTime.Point point(int frames, double rougher, double staying) {
        double fresh = rougher * 10 / Math.sqrt(frames);
        return new NoiseOverTime.Point(frames, 60.0 * frames, fresh * Math.sqrt(1 + staying), fresh, fresh);
    }
}
