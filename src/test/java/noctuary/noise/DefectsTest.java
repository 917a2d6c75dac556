package noctuary.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Planted amounts come back, and nothing comes from nothing; {@link DefectsBench} does the same at length. */
class DefectsTest {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 900;
    private static final double SIGMA = 10;

    private static SimulatedFrame sky(long seed) {
        return new SimulatedFrame(WIDTH, HEIGHT, seed).sky(900, 60, 30).stars(350, 3, 30);
    }

    private static SimulatedFrame frame(long seed) {
        return sky(seed).whiteNoise(SIGMA);
    }

    private static Defects find(SimulatedFrame frame) {
        return Defects.find(frame.toSixteenBit(), Optional.empty(), OptionalDouble.empty());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 40, 81, 122, 163})
    void cleanFramesReportNothing(int seed) {
        Optional<Mosaic> mosaic = seed % 4 == 3 ? Optional.of(Mosaic.GRBG) : Optional.empty();
        Defects found = Defects.find(DefectsBench.cleanFrame(seed), mosaic, OptionalDouble.empty());
        assertThat(DefectsBench.isClean(found)).as("%s", found).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"300,120", "30,1000", "300,1000", "300,20000"})
    void hotPixelsAreCounted(int count, double above) {
        assertThat(find(frame(count).singles(count, above)).hotPixels().orElseThrow())
                .isCloseTo(count, within(0.1 * count));
    }

    @Test
    void coldPixelsAreCounted() {
        Defects found = find(frame(8).singles(200, -300));
        assertThat(found.coldPixels().orElseThrow()).isCloseTo(200, within(20.0));
        assertThat(found.hotPixels().orElseThrow()).isZero();
    }

    @Test
    void hotPixelsOfAMosaicAreComparedWithinTheirColour() {
        Plane plane = new SimulatedFrame(WIDTH, HEIGHT, 9)
                .sky(900, 60, 30)
                .stars(350, 2, 30)
                .grbg(0.6, 1, 0.7)
                .photons(1, 5)
                .singles(250, 600)
                .toSixteenBit();
        Defects found = Defects.find(plane, Optional.of(Mosaic.GRBG), OptionalDouble.empty());
        assertThat(found.hotPixels().orElseThrow()).isCloseTo(250, within(25.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 1, 5})
    void bandingComesBackInAdu(double sigma) {
        Defects rows = find(frame(11).rowOffsets(sigma));
        assertThat(rows.rowBanding().orElseThrow()).isCloseTo(sigma, within(0.1 * sigma));
        assertThat(rows.columnBanding().orElseThrow()).isZero();
        Defects columns = find(frame(12).columnOffsets(sigma));
        assertThat(columns.columnBanding().orElseThrow()).isCloseTo(sigma, within(0.1 * sigma));
        assertThat(columns.rowBanding().orElseThrow()).isZero();
    }

    /** On frames above four megapixels only every second cell is asked for the means of its lines. */
    @Test
    void largeFramesTellTheirDefectsFromHalfOfTheirCells() {
        Defects rows = find(large(21).rowOffsets(0.5).singles(500, 200));
        assertThat(rows.rowBanding().orElseThrow()).isCloseTo(0.5, within(0.05));
        assertThat(rows.columnBanding().orElseThrow()).isZero();
        assertThat(rows.hotPixels().orElseThrow()).isCloseTo(500, within(25.0));
        Defects columns = find(large(22).columnOffsets(0.5));
        assertThat(columns.columnBanding().orElseThrow()).isCloseTo(0.5, within(0.05));
        assertThat(columns.rowBanding().orElseThrow()).isZero();
        assertThat(columns.hotPixels().orElseThrow()).isZero();
    }

    private static SimulatedFrame large(long seed) {
        return new SimulatedFrame(2500, 1800, seed)
                .sky(900, 60, 30)
                .stars(1200, 3, 30)
                .whiteNoise(SIGMA);
    }

    /** Rows 4 ADU up and down in turn on the reference field T1: the true excess is 4. */
    @Test
    void alternatingRowsAreBanding() {
        double[][] t1 = Published.t1();
        float[] wide = new float[256 * 64];
        for (int i = 0; i < wide.length; i++) {
            int y = i / 256;
            int x = i % 256;
            wide[i] = (float) (t1[(y + 17 * (x / 64)) % 64][x % 64] + (y % 2 == 0 ? -4 : 4));
        }
        Defects found = Defects.find(Plane.of(256, 64, wide), Optional.empty(), OptionalDouble.empty());
        assertThat(found.rowBanding().orElseThrow()).isCloseTo(4, within(0.4));
    }

    @ParameterizedTest
    @CsvSource({"0.15,33,20", "0.3,-45,12", "0.3,90,16", "0.5,70,25"})
    void streaksComeBackWithTheirAngle(double strength, double angleDeg, int length) {
        Defects found = find(frame(13).streaks(strength * SIGMA, angleDeg, length));
        assertThat(found.driftStreak().orElseThrow()).isCloseTo(strength, within(0.1 * strength));
        assertThat(found.driftStreakAngleDeg().orElseThrow()).isCloseTo(angleDeg, within(2.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4})
    void streaksComeBackFromUnderANebula(double strength) {
        Defects found = find(sky(21).nebula(150).whiteNoise(SIGMA).streaks(strength * SIGMA, 27, 24));
        assertThat(found.driftStreak().orElseThrow()).isCloseTo(strength, within(0.1 * strength));
        assertThat(found.driftStreakAngleDeg().orElseThrow()).isCloseTo(27, within(2.0));
    }

    /** A galaxy seen from its edge, and veils of a nebula that all run one way: sharp, but not everywhere or not narrow. */
    @Test
    void whatIsDrawnOutInTheSkyIsNoStreak() {
        SimulatedFrame edgeOn = sky(22).add((x, y) -> {
            double along = (x - 600) * 0.97 + (y - 450) * 0.24;
            double across = (y - 450) * 0.97 - (x - 600) * 0.24;
            return 120
                    * Math.exp(-Math.pow(along / 300, 2) - Math.abs(across) / 12)
                    * (1 - 0.6 * Math.exp(-across * across / 8));
        });
        assertThat(find(edgeOn.whiteNoise(SIGMA)).driftStreak().orElseThrow()).isZero();
        SimulatedFrame veils =
                sky(23).add((x, y) -> 30 * Math.pow(Math.sin((y - 0.5 * x) / 4.0 + Math.sin(x / 90.0)), 2));
        assertThat(find(veils.whiteNoise(SIGMA)).driftStreak().orElseThrow()).isZero();
    }

    @Test
    void clippingIsAShareOfThePixels() {
        Plane plane = new SimulatedFrame(WIDTH, HEIGHT, 14)
                .sky(900, 0, 0)
                .whiteNoise(SIGMA)
                .clip(885, 920)
                .toFloats();
        Defects found = Defects.find(plane, Optional.empty(), OptionalDouble.empty());
        assertThat(found.clippedBlackPercent().orElseThrow()).isCloseTo(6.681, within(0.1));
        assertThat(found.clippedWhitePercent().orElseThrow()).isCloseTo(2.275, within(0.1));
    }

    @Test
    void saturationIsCountedFromTheLevelGiven() {
        float[] pixels = new float[100 * 100];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = 100 + i % 7;
        }
        pixels[5000] = 4095;
        pixels[5001] = 4090;
        Defects found = Defects.find(Plane.of(100, 100, pixels), Optional.empty(), OptionalDouble.of(4090));
        assertThat(found.clippedWhitePercent().orElseThrow()).isCloseTo(0.02, within(1e-9));
    }

    @Test
    void glowIsFoundInItsCorner() {
        Shading found = find(sky(15).glow(80, 150).whiteNoise(SIGMA)).shading().orElseThrow();
        double planted = 80 * DefectsBench.cornerMean(150);
        Shading.Corner corner = found.glow().orElseThrow();
        assertThat(corner.row()).isZero();
        assertThat(corner.column()).isZero();
        assertThat(corner.amount()).isCloseTo(planted, within(0.1 * planted));
        assertThat(found.darkCorner()).isEmpty();
        assertThat(found.shadow()).isEmpty();
    }

    @Test
    void darkCornerIsFound() {
        Shading found = find(sky(16).glow(-80, 150).whiteNoise(SIGMA)).shading().orElseThrow();
        assertThat(found.darkCorner().orElseThrow().amount()).isCloseTo(80 * DefectsBench.cornerMean(150), within(8.0));
        assertThat(found.glow()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.2, 0.5})
    void shadowHasShareAndDepth(double depth) {
        Shading.Shadow found = find(sky(17).shadow(depth, 0.3).whiteNoise(SIGMA))
                .shading()
                .orElseThrow()
                .shadow()
                .orElseThrow();
        assertThat(found.fieldPercent()).isCloseTo(30, within(4.0));
        assertThat(found.depthPercent()).isCloseTo(100 * depth, within(10 * depth));
        assertThat(found.x()).isLessThan(0.25);
    }

    /** Frames shifted onto a common grid end in zeros: no clipping, no shadow, no banding. */
    @Test
    void zeroPaddingIsNotADefect() {
        SimulatedFrame padded = frame(18).multiply((x, y) -> x < 90 + y / 10 || y > HEIGHT - 70 ? 0 : 1);
        Defects found = find(padded);
        assertThat(DefectsBench.isClean(found)).as("%s", found).isTrue();
    }

    @Test
    void answersDoNotDependOnTheRun() {
        assertThat(find(frame(19).rowOffsets(1))).isEqualTo(find(frame(19).rowOffsets(1)));
    }

    @Test
    void oddPlanesNeverThrow() {
        int[][] sizes = {{1, 1}, {2, 2}, {1, 300}, {300, 1}, {63, 65}, {5, 4000}, {129, 127}};
        for (int[] size : sizes) {
            for (float fill : new float[] {0, 7, Float.NaN, Float.POSITIVE_INFINITY}) {
                float[] pixels = new float[size[0] * size[1]];
                Arrays.fill(pixels, fill);
                Plane flat = Plane.of(size[0], size[1], pixels);
                assertThat(Survey.of(flat, Optional.of(Mosaic.BGGR), OptionalDouble.of(1))
                                .defects()
                                .rowBanding())
                        .isEmpty();
                Plane noisy = new SimulatedFrame(size[0], size[1], 20)
                        .sky(100, 0, 0)
                        .whiteNoise(5)
                        .toFloats();
                assertThat(Survey.of(noisy, Optional.empty(), OptionalDouble.empty())
                                .noise())
                        .isPresent();
                assertThat(Survey.of(noisy, Optional.of(Mosaic.RGGB), OptionalDouble.empty())
                                .noise())
                        .isPresent();
            }
        }
    }
}
