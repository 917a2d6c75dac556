package noctuary.rig;

import static noctuary.rig.Rigs.absent;
import static noctuary.rig.Rigs.check;
import static noctuary.rig.Rigs.mm;
import static noctuary.rig.Rigs.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpacingTest {
    @Test
    void namesTheShimThatIsWanted() {
        Check check = check(Rigs.heron(), "back-focus");
        assertThat(check.level()).isEqualTo(Check.Level.WARN);
        assertThat(check.text())
                .isEqualTo("The sensor is 0.68 mm too close to the corrector: 55 mm are there (spacer 37.5 mm + camera"
                        + " 17.5 mm), 55.68 mm are wanted (55 mm as stated, plus 0.68 mm because filter glass moves the"
                        + " focus back; glass taken as n = 1.5168). Add a shim or a longer spacer: 0.68 mm more"
                        + " (tolerance ± 0.5 mm, common practice, no source: the maker's drawing overrides).");
    }

    /** 55 mm with 2 and 1.1 mm of BK7: 55 + 3.1 (0.5168 / 1.5168) = 56.05622 mm. */
    @Test
    void addsEveryGlass() {
        RigSpec rig =
                Rigs.with(part("corrector", absent(), "", ""), glass(2), glass(1.1), part("camera", mm(55), "", ""));
        Spacing spacing = Spacing.of(rig);
        assertThat(spacing.requiredMm().orElseThrow()).isCloseTo(56.05622, within(1e-5));
        assertThat(spacing.residualMm().orElseThrow()).isCloseTo(-1.05622, within(1e-5));
        assertThat(check(rig, "back-focus").level()).isEqualTo(Check.Level.WRONG);
    }

    @Test
    void tooFarCannotBeShimmed() {
        Check check = check(Rigs.with(part("camera", mm(56.2), "", "")), "back-focus");
        assertThat(check.level()).isEqualTo(Check.Level.WRONG);
        assertThat(check.text()).contains("1.2 mm too far", "A shim cannot help; a spacer shorter by 1.2 mm can");
    }

    @Test
    void withinToleranceIsRight() {
        Check check = check(Rigs.with(part("camera", mm(54.5), "", "")), "back-focus");
        assertThat(check.level()).isEqualTo(Check.Level.OK);
        assertThat(check(Rigs.with(part("camera", mm(54.49), "", "")), "back-focus")
                        .level())
                .isEqualTo(Check.Level.WARN);
    }

    @Test
    void theCorrectorsOwnLengthLiesBeforeTheDistance() {
        RigSpec rig = Rigs.with(part("field flattener", mm(80), "", ""), part("camera", mm(55), "", ""));
        assertThat(Spacing.of(rig).actualMm()).hasValue(55);
    }

    @Test
    void aMissingLengthMakesTheSumAbsent() {
        RigSpec rig = Rigs.with(part("corrector", absent(), "", ""), part("spacer", absent(), "", ""));
        assertThat(RigFigures.of(rig).backFocusActualMm()).isEmpty();
        assertThat(check(rig, "back-focus").text())
                .isEqualTo("The distance from corrector to sensor cannot be summed: write the length of spacer.");
        assertThat(RigFigures.missing(rig))
                .containsEntry("backFocusActualMm", "the rig's note does not give the length of spacer");
    }

    private static RigSpec.TrainPart glass(double mm) {
        return new RigSpec.TrainPart("filter", absent(), mm(mm), Optional.empty(), Optional.empty());
    }
}
