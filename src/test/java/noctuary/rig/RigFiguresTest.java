package noctuary.rig;

import static noctuary.rig.Rigs.absent;
import static noctuary.rig.Rigs.check;
import static noctuary.rig.Rigs.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RigFiguresTest {
    /** 712.5 mm behind the reducer, f/4.75; the rest from the formulas of {@link OpticsTest}. */
    @Test
    void workedExample() {
        RigFigures figures = RigFigures.of(Rigs.heron());
        assertThat(figures.effectiveFocalLengthMm().orElseThrow()).isCloseTo(712.5, within(1e-9));
        assertThat(figures.focalRatio().orElseThrow()).isCloseTo(4.75, within(1e-9));
        assertThat(figures.imageScaleArcsecPerPx().orElseThrow()).isCloseTo(0.955332, within(1e-6));
        assertThat(figures.sensorDiagonalMm().orElseThrow()).isCloseTo(21.12, within(1e-9));
        assertThat(figures.fieldWidthDeg().orElseThrow()).isCloseTo(1.358631, within(1e-6));
        assertThat(figures.depthOfFocusUm().orElseThrow()).isCloseTo(24.81875, within(1e-9));
        assertThat(figures.payloadKg().orElseThrow()).isCloseTo(6.8, within(1e-12));
        assertThat(RigFigures.missing(Rigs.heron())).isEmpty();
    }

    @Test
    void aRigWithoutNumbersHasNoFiguresNoChecksAndSaysWhy() {
        RigSpec nothing = new RigSpec(Rigs.NO_OPTICS, Rigs.NO_CAMERA, List.of(), absent(), List.of());
        RigFigures figures = RigFigures.of(nothing);
        assertThat(figures.imageScaleArcsecPerPx()).isEmpty();
        assertThat(figures.backFocusRequiredMm()).isEmpty();
        assertThat(figures.backFocusActualMm()).isEmpty();
        assertThat(figures.payloadKg()).isEmpty();
        assertThat(figures.checks()).isEmpty();
        assertThat(RigFigures.missing(nothing))
                .hasSize(12)
                .containsEntry("imageScaleArcsecPerPx", "the rig's note does not give the pixel size and focal length");
    }

    @Test
    void aFocalLengthOfZeroIsNoFocalLength() {
        RigSpec.Optics optics = new RigSpec.Optics(mm(150), mm(0), absent(), absent(), absent());
        RigSpec rig = new RigSpec(optics, Rigs.heron().camera(), List.of(), absent(), List.of());
        assertThat(RigFigures.of(rig).imageScaleArcsecPerPx()).isEmpty();
        assertThat(RigFigures.missing(rig)).containsKey("imageScaleArcsecPerPx");
    }

    @Test
    void withoutPixelCountsTheScaleStands() {
        RigSpec.Camera camera =
                new RigSpec.Camera(mm(3.76), OptionalInt.empty(), OptionalInt.empty(), absent(), absent(), absent());
        RigSpec rig = new RigSpec(Rigs.heron().optics(), camera, List.of(), absent(), List.of());
        assertThat(RigFigures.of(rig).imageScaleArcsecPerPx()).isPresent();
        assertThat(RigFigures.of(rig).fieldWidthDeg()).isEmpty();
        assertThat(RigFigures.missing(rig))
                .containsEntry("fieldWidthDeg", "the rig's note does not give the width in pixels")
                .doesNotContainKey("imageScaleArcsecPerPx");
    }

    @Test
    void aSensorLargerThanTheCircleIsSaid() {
        assertThat(check(Rigs.heron(), "image-circle").level()).isEqualTo(Check.Level.OK);
        Check outside = CircleCheck.of(mm(43.3), mm(40)).orElseThrow();
        assertThat(outside.level()).isEqualTo(Check.Level.WARN);
        assertThat(outside.text()).contains("outside by 1.65 mm on each side");
    }

    /** Half the rating: common practice, no source. */
    @Test
    void mountLoad() {
        assertThat(check(Rigs.heron(), "mount-load").level()).isEqualTo(Check.Level.OK);
        assertThat(LoadCheck.of(mm(10), mm(20)).orElseThrow().level()).isEqualTo(Check.Level.OK);
        assertThat(LoadCheck.of(mm(10.1), mm(20)).orElseThrow().level()).isEqualTo(Check.Level.WARN);
        assertThat(LoadCheck.of(mm(20.1), mm(20)).orElseThrow().level()).isEqualTo(Check.Level.WRONG);
        assertThat(LoadCheck.of(mm(20.1), mm(0))).isEmpty();
    }

    @Test
    void pixelsFinerThanTheOpticsAreSaid() {
        assertThat(check(Rigs.heron(), "sampling").level()).isEqualTo(Check.Level.OK);
        Check fine = SamplingCheck.of(mm(0.2), mm(0.75), mm(2.4), mm(14)).orElseThrow();
        assertThat(fine.level()).isEqualTo(Check.Level.WARN);
        assertThat(fine.text()).contains("at f/14 pixels of 3.85 µm would lose nothing");
    }
}
