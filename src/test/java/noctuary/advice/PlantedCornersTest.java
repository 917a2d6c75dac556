package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import noctuary.stars.FieldModel;
import noctuary.stars.StarField;
import noctuary.stars.sim.SkySimulator;
import noctuary.stars.sim.StarShape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Stars widened over simulated fields as a tilted or misplaced sensor widens them, two frames a night. Blur of a spacing
 * fault grows as the square of the distance from the middle and adds in squares.
 */
class PlantedCornersTest {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;
    private static final double MIDDLE_PX = 3;
    /** A normal error lies beyond once in two thousand. */
    private static final double SURE = 3.5;

    /**
     * What is planted: share of width that a tilt adds at the end of the long side where all of the field lies on one
     * side of focus, blur there where the middle is in focus, and blur in the corner from spacing.
     */
    private record Fault(double lean, double about, double directionDeg, double blurPx) implements StarShape {
        @Override
        public At at(double x, double y) {
            double u = 2 * (x + 0.5) / WIDTH - 1;
            double v = (2 * (y + 0.5) / HEIGHT - 1) * HEIGHT / WIDTH;
            double r2 = (u * u + v * v) / (1 + Math.pow((double) HEIGHT / WIDTH, 2));
            double along = u * Math.cos(Math.toRadians(directionDeg)) + v * Math.sin(Math.toRadians(directionDeg));
            return new At(
                    Math.hypot(MIDDLE_PX * (1 + lean * along), Math.hypot(blurPx * r2, about * along)), 0.05, 25, 3.5);
        }

        double tiltPx() {
            return MIDDLE_PX * lean * 2 / WIDTH * Math.hypot(WIDTH, HEIGHT);
        }

        double risePx() {
            return Math.hypot(MIDDLE_PX, blurPx) - MIDDLE_PX;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aTiltIsFoundWithItsDirectionAndAmount(long seed) {
        Fault fault = new Fault(0.06 + 0.05 * seed, 0, 53 * seed - 180, 0);
        Corners corners = measured(fault, seed);
        assertThat(corners.tiltPx()).isCloseTo(fault.tiltPx(), within(SURE * corners.tiltErrorPx()));
        assertDirection(corners, fault);
        assertThat(corners.tiltErrorPx()).isLessThan(0.1 * fault.tiltPx());
        assertThat(CornerLimits.says(corners)).contains("tilt").doesNotContain("spacing");
    }

    /** Up to a third more width in the corners the surface follows within 5 %; see the method page. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aSpacingFaultIsFoundWithItsAmount(long seed) {
        Fault fault = new Fault(0, 0, 0, 1.3 + 0.2 * seed);
        Corners corners = measured(fault, seed);
        assertThat(corners.risePx())
                .isCloseTo(fault.risePx(), within(0.05 * fault.risePx() + SURE * corners.riseErrorPx()));
        assertThat(CornerLimits.says(corners)).contains("spacing").doesNotContain("tilt");
    }

    /** Blur of so much at the end of the long side, in squares: hypot(3, 2.4) - 3 = 0.84 px along the axis, 0 across. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aTiltWhoseMiddleIsInFocusIsNotTakenForSpacing(long seed) {
        Fault fault = new Fault(0, 1.2 + 0.2 * seed, 28 * seed - 90, 0);
        Corners corners = measured(fault, seed);
        assertThat(CornerLimits.says(corners))
                .contains("tilt about a middle in focus")
                .doesNotContain("spacing");
        double off = Math.IEEEremainder(corners.oneWayDirectionDeg() - fault.directionDeg(), 180);
        double error = Math.toDegrees(corners.oneWayErrorPx() / corners.oneWayPx()) / 2;
        assertThat(off).isCloseTo(0, within(SURE * error + 1));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void bothAreToldApart(long seed) {
        Fault fault = new Fault(0.2, 0, 100 * seed - 180, 2);
        Corners corners = measured(fault, seed);
        assertThat(corners.risePx())
                .isCloseTo(fault.risePx(), within(0.08 * fault.risePx() + SURE * corners.riseErrorPx()));
        assertThat(corners.tiltPx())
                .isCloseTo(fault.tiltPx(), within(0.05 * fault.tiltPx() + SURE * corners.tiltErrorPx()));
        assertDirection(corners, fault);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neitherIsFoundWhereNothingWasPlanted(long seed) {
        assertThat(CornerLimits.says(measured(new Fault(0, 0, 0, 0), seed))).isEqualTo("neither, within errors");
    }

    /** An error across the arrow turns it by as much over its length. */
    private static void assertDirection(Corners corners, Fault fault) {
        double error = Math.toDegrees(corners.tiltErrorPx() / corners.tiltPx());
        double off = Math.IEEEremainder(corners.tiltDirectionDeg() - fault.directionDeg(), 360);
        assertThat(off).isCloseTo(0, within(SURE * error));
    }

    private static Corners measured(Fault fault, long seed) {
        List<FieldModel> frames = IntStream.range(0, 2)
                .mapToObj(n -> new SkySimulator(WIDTH, HEIGHT, 100 * seed + n)
                        .shape(fault)
                        .stars(120, 20, 300, 14)
                        .frame()
                        .plane())
                .map(plane -> StarField.measure(plane, StarField.Conditions.PLAIN)
                        .model()
                        .orElseThrow())
                .toList();
        return Corners.of(frames).orElseThrow();
    }
}
