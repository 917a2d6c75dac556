package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import noctuary.stars.FieldModel;
import org.junit.jupiter.api.Test;

/** Fields of single frames put together. */
class CornersTest {
    /** Tilts of 0.3 px towards the right and the top: half of each over two frames, hypot(0.15, 0.15). */
    @Test
    void tiltsOfFramesAddUpAsArrows() {
        Corners corners = Corners.of(List.of(field(0.3, 0), field(0.3, 90))).orElseThrow();
        assertThat(corners.tiltPx()).isCloseTo(0.2121, within(1e-4));
        assertThat(corners.tiltDirectionDeg()).isCloseTo(45, within(1e-9));
    }

    @Test
    void aTiltTooSlightForADirectionIsNone() {
        Corners corners = Corners.of(List.of(field(0, Double.NaN))).orElseThrow();
        assertThat(corners.tiltPx()).isZero();
        assertThat(CornerLimits.says(corners)).isEqualTo("neither, within errors");
    }

    private static FieldModel field(double tiltPx, double directionDeg) {
        return new FieldModel(200, 3, 0.01, 0.1, 0.05, tiltPx, 0.05, directionDeg, 0.02, 0.05, 0.1);
    }
}
