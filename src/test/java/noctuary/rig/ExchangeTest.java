package noctuary.rig;

import static noctuary.rig.Rigs.absent;
import static noctuary.rig.Rigs.mm;
import static noctuary.rig.Rigs.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two rigs of which every part differs; expected values by hand from the numbers below. */
class ExchangeTest {
    private static final RigSpec OWN = rig(100, 700, 0.8, 55, 3.76, 20, 37.5, 17.5, "M42x0.75");
    private static final RigSpec OTHER = rig(150, 750, 0.95, 57, 4.6, 15, 40, 12.5, "M48x0.75");

    @ParameterizedTest
    @CsvSource({
        "main tube with rings, TELESCOPE",
        "Short refractor, TELESCOPE",
        "0.8 reducer, CORRECTOR",
        "field flattener, CORRECTOR",
        "camera window, CAMERA",
        "guide scope and camera, OTHER",
        "the grey mount, MOUNT",
        "spacer, OTHER"
    })
    void aPartIsWhatItsNameSays(String name, PartRole.Kind kind) {
        assertThat(PartRole.of(name).kind()).isEqualTo(kind);
    }

    /** 750 mm behind the own 0.8: 600 mm, 206.264806 x 3.76 / 600 = 1.292593 arcsec; 4 + 0.5 kg. */
    @Test
    void aTelescopeKeepsCorrectorAndCamera() {
        RigFigures figures = exchanged(PartRole.TELESCOPE);
        assertThat(figures.effectiveFocalLengthMm().getAsDouble()).isCloseTo(600, within(1e-9));
        assertThat(figures.focalRatio().getAsDouble()).isCloseTo(4, within(1e-9));
        assertThat(figures.imageScaleArcsecPerPx().getAsDouble()).isCloseTo(1.292593, within(1e-6));
        assertThat(figures.backFocusRequiredMm()).hasValue(55);
        assertThat(figures.payloadKg().getAsDouble()).isCloseTo(4.5, within(1e-9));
    }

    /** 700 x 0.95 = 665 mm, and 57 mm wanted of which 55 are there; its thread no longer fits the spacer. */
    @Test
    void aCorrectorBringsItsFactorDistanceAndThread() {
        RigFigures figures = exchanged(PartRole.CORRECTOR);
        assertThat(figures.effectiveFocalLengthMm().getAsDouble()).isCloseTo(665, within(1e-9));
        assertThat(figures.backFocusRequiredMm()).hasValue(57);
        assertThat(figures.backFocusActualMm()).hasValue(55);
        assertThat(figures.checks())
                .filteredOn(c -> c.id().equals("joint-corrector-spacer"))
                .extracting(Check::level)
                .containsExactly(Check.Level.WRONG);
    }

    /** 206.264806 x 4.6 / 560 = 1.694318 arcsec; 37.5 + 12.5 = 50 mm. */
    @Test
    void aCameraBringsItsPixelsAndItsLength() {
        RigFigures figures = exchanged(PartRole.CAMERA);
        assertThat(figures.imageScaleArcsecPerPx().getAsDouble()).isCloseTo(1.694318, within(1e-6));
        assertThat(figures.backFocusActualMm()).hasValue(50);
        assertThat(Exchange.of(OWN, OTHER, PartRole.CAMERA).train())
                .extracting(RigSpec.TrainPart::name)
                .containsExactly("corrector", "spacer", "camera");
    }

    @Test
    void aMountBringsItsRating() {
        assertThat(Exchange.of(OWN, OTHER, PartRole.MOUNT).mountCapacityKg()).hasValue(15);
    }

    @Test
    void aSpacerBringsItsLengthAndAPartThatOneSideLacksIsNotExchanged() {
        assertThat(exchanged(PartRole.of("spacer")).backFocusActualMm()).hasValue(57.5);
        assertThat(Exchange.of(OWN, OTHER, PartRole.of("filter drawer"))).isSameAs(OWN);
        assertThat(Exchange.roles(OWN, OTHER))
                .extracting(PartRole::name)
                .containsExactly("telescope", "corrector or reducer", "camera", "mount", "spacer");
    }

    /** A price or a weight that only one side tells is not guessed. */
    @Test
    void aWeightOnOneSideOnlyLeavesTheLoadUnknown() {
        RigSpec bare = new RigSpec(OTHER.optics(), OTHER.camera(), OTHER.train(), OptionalDouble.of(15), List.of());
        assertThat(RigFigures.of(Exchange.of(OWN, bare, PartRole.CAMERA)).payloadKg())
                .isEmpty();
        assertThat(Exchange.listed(List.of("tube"), List.of("tube", "camera"), PartRole.CAMERA, name -> name))
                .isEmpty();
        assertThat(Exchange.listed(List.of("spacer ring"), List.of("spacer"), PartRole.of("spacer"), name -> name))
                .contains(List.of("spacer"));
    }

    /** A rig in whose note only a camera stands: a part that is thought of. */
    @Test
    void whatTheOtherDoesNotTellStaysTheOwn() {
        OptionalDouble no = OptionalDouble.empty();
        RigSpec thought = new RigSpec(new RigSpec.Optics(no, no, no, no, no), OTHER.camera(), List.of(), no, List.of());
        assertThat(Exchange.of(OWN, thought, PartRole.TELESCOPE)).isSameAs(OWN);
        assertThat(Exchange.of(OWN, thought, PartRole.CORRECTOR)).isSameAs(OWN);
        assertThat(Exchange.of(OWN, thought, PartRole.MOUNT)).isSameAs(OWN);
        RigSpec changed = Exchange.of(OWN, thought, PartRole.CAMERA);
        assertThat(changed.camera()).isEqualTo(OTHER.camera());
        assertThat(RigFigures.of(changed).backFocusActualMm())
                .as("its length is not told")
                .isEmpty();
    }

    private static RigFigures exchanged(PartRole role) {
        return RigFigures.of(Exchange.of(OWN, OTHER, role));
    }

    private static RigSpec rig(
            double aperture,
            double focal,
            double reducer,
            double backFocus,
            double pixel,
            double capacity,
            double spacer,
            double camera,
            String thread) {
        return new RigSpec(
                new RigSpec.Optics(mm(aperture), mm(focal), mm(reducer), mm(backFocus), mm(28)),
                new RigSpec.Camera(mm(pixel), OptionalInt.of(4000), OptionalInt.of(3000), absent(), absent(), absent()),
                List.of(
                        part("corrector", absent(), "", thread + " male"),
                        part("spacer", mm(spacer), thread + " female", "M42x0.75 male"),
                        part("camera", mm(camera), "M42x0.75 female", "")),
                mm(capacity),
                List.of(new RigSpec.Load("tube", focal == 700 ? 2 : 4), new RigSpec.Load("camera", 0.5)));
    }
}
