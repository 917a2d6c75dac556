package noctuary.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;

class NoiseReportTest {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 800;

    private static NoiseReport report(Plane plane) {
        return NoiseReport.measure(plane, Optional.empty()).orElseThrow();
    }

    private static SimulatedFrame field(long seed) {
        return new SimulatedFrame(WIDTH, HEIGHT, seed).sky(900, 60, -30).stars(300, 3, 30);
    }

    @Test
    void whiteNoiseIsTheSameAtEveryScale() {
        NoiseReport found = report(field(1).whiteNoise(10).toSixteenBit());
        assertThat(found.level()).isCloseTo(915, within(2.0));
        assertThat(found.sigma()).isCloseTo(10, within(0.3));
        assertThat(found.sigmaDerSnr().orElseThrow()).isCloseTo(10, within(0.3));
        assertThat(found.sigmaImmerkaer().orElseThrow()).isCloseTo(10, within(0.2));
        assertThat(found.correlation().orElseThrow()).isCloseTo(1, within(0.06));
        assertThat(found.scales()).extracting(NoiseReport.Scale::sizePx).containsExactly(1, 2, 4, 8);
        assertThat(found.scales()).allSatisfy(s -> assertThat(s.sigma()).isCloseTo(10, within(0.6)));
    }

    @Test
    void gradientIsFoundWithItsDirection() {
        NoiseReport.Gradient found =
                report(field(2).whiteNoise(10).toSixteenBit()).gradient();
        assertThat(found.range()).isCloseTo(90, within(2.0));
        assertThat(found.percent()).isCloseTo(100 * 90 / 915.0, within(0.3));
        assertThat(found.directionDeg())
                .isCloseTo(Math.toDegrees(Math.atan2(-30.0 / HEIGHT, 60.0 / WIDTH)), within(2.0));
    }

    @Test
    void zonesFollowTheSky() {
        NoiseReport found = report(field(3).whiteNoise(10).toSixteenBit());
        assertThat(found.zones()).hasSize(9);
        assertThat(found.zones()).allSatisfy(zone -> {
            double expected = 900 + 60 * (zone.column() + 0.5) / 3 - 30 * (zone.row() + 0.5) / 3;
            assertThat(zone.level()).isCloseTo(expected, within(2.0));
            assertThat(zone.sigma()).isCloseTo(10, within(0.4));
        });
    }

    /**
     * Gaussian smoothing with sigma 0.5, 0.7 and 1 px leaves 0.64136, 0.40929 and 0.28212 of the noise of a pixel (sum
     * of squared weights), while means of large blocks keep theirs: the correlation tends to one over that. Blocks of
     * 8 px lose a little over their edges, by how much follows from the weights.
     */
    @Test
    void smoothedNoiseIsToldByItsCorrelation() {
        double[][] cases = {{0.5, 0.64136}, {0.7, 0.40929}, {1, 0.28212}};
        for (double[] smoothed : cases) {
            double[] kernel = Smoothing.kernel(smoothed[0]);
            Plane plane = Smoothing.apply(
                    new SimulatedFrame(WIDTH, HEIGHT, 4)
                            .sky(900, 0, 0)
                            .whiteNoise(20)
                            .toFloats(),
                    kernel);
            NoiseReport found = report(plane);
            assertThat(Smoothing.noiseLeft(kernel)).isCloseTo(smoothed[1], within(1e-5));
            assertThat(found.scales().get(0).sigma()).isCloseTo(20 * smoothed[1], within(20 * smoothed[1] * 0.02));
            double expected = Smoothing.blockNoise(kernel, 8) / smoothed[1];
            assertThat(found.correlation().orElseThrow()).isCloseTo(expected, within(0.06 * expected));
            assertThat(found.sigmaImmerkaer().orElseThrow()).isLessThan(0.75 * found.sigma());
        }
    }

    @Test
    void mosaicIsMeasuredByColour() {
        Plane plane = new SimulatedFrame(WIDTH, HEIGHT, 5)
                .sky(900, 0, 0)
                .grbg(0.5, 1, 0.7)
                .whiteNoise(8)
                .toSixteenBit();
        NoiseReport found = NoiseReport.measure(plane, Optional.of(Mosaic.GRBG)).orElseThrow();
        assertThat(found.level()).isCloseTo(900 * (0.5 + 1 + 1 + 0.7) / 4, within(1.0));
        assertThat(found.sigma()).isCloseTo(8, within(0.2));
        assertThat(found.sigmaDerSnr().orElseThrow()).isCloseTo(8, within(0.3));
        assertThat(found.correlation().orElseThrow()).isCloseTo(1, within(0.1));
    }

    @Test
    void coarseWholeNumbersDoNotBreakTheScale() {
        NoiseReport found = report(new SimulatedFrame(WIDTH, HEIGHT, 6)
                .sky(120, 0, 0)
                .whiteNoise(0.4)
                .toSixteenBit());
        assertThat(found.sigma()).isCloseTo(Math.sqrt(0.16 + 1 / 12.0), within(0.06));
    }

    @Test
    void oddPlanesNeverThrow() {
        assertThat(NoiseReport.measure(Plane.of(1, 1, new float[] {Float.NaN}), Optional.empty()))
                .isEmpty();
        assertThat(report(Plane.of(1, 1, new float[] {7})).level()).isEqualTo(7);
        assertThat(report(Plane.of(3, 200, new float[600])).sigma()).isZero();
        assertThat(NoiseReport.measure(Plane.of(1, 5, new float[5]), Optional.of(Mosaic.RGGB)))
                .isPresent();
    }
}
