package noctuary.rig;

import static noctuary.rig.Rigs.absent;
import static noctuary.rig.Rigs.mm;
import static noctuary.rig.Rigs.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class JointChecksTest {
    @Test
    void equalThreadsOfOppositeGenderMate() {
        assertThat(joint("M48x0.75 male", "M48x0.75 female"))
                .isEqualTo(new Check(
                        "joint-corrector-spacer", Check.Level.OK, "Corrector to spacer: M48x0.75, male into female."));
        assertThat(joint("2 in x 24 tpi female", "2\" 24 tpi male").level()).isEqualTo(Check.Level.OK);
        assertThat(joint("1.25 in push-fit female", "1 1/4 in barrel male").level())
                .isEqualTo(Check.Level.OK);
    }

    @Test
    void anotherPitchLooksAlikeAndBinds() {
        Check check = joint("M42x0.75 male", "M42x1 female");
        assertThat(check.level()).isEqualTo(Check.Level.WRONG);
        assertThat(check.text())
                .isEqualTo(
                        "Corrector to spacer: they will not mate: both are 42 mm wide, but the pitch is 0.75 mm on one"
                                + " side and 1 mm on the other: they look alike and bind after a turn or two, so never"
                                + " force them. An adapter with M42x0.75 female in front and M42x1 male behind joins them;"
                                + " its length counts in the spacing.");
    }

    @Test
    void anotherDiameterNamesTheAdapter() {
        Check check = joint("M48x0.75 male", "M42x0.75 female");
        assertThat(check.level()).isEqualTo(Check.Level.WRONG);
        assertThat(check.text()).contains("M48x0.75 female in front and M42x0.75 male behind");
    }

    @Test
    void twoMalesNeedARing() {
        Check check = joint("M48x0.75 male", "M48x0.75 male");
        assertThat(check.level()).isEqualTo(Check.Level.WRONG);
        assertThat(check.text()).contains("both are male", "M48x0.75 female in front and M48x0.75 female behind");
    }

    /** ISO 68-1: the profile of an M50x1 is 1.0825 mm deep in diameter, so 50.0 in 50.8 mm still catches. */
    @Test
    void nearlyTheSameDiameterIsCalledTreacherous() {
        assertThat(Threads.profileDepthMm(1)).isCloseTo(1.082532, within(1e-6));
        assertThat(joint("M50x1 male", "2 in x 24 tpi female").text()).contains("never trust it");
        assertThat(joint("M48x0.75 male", "M42x0.75 female").text()).doesNotContain("never trust it");
    }

    @Test
    void aPushFitDoesNotScrewIn() {
        assertThat(joint("1.25 in push-fit female", "M28.5x0.6 male").text())
                .contains("one is a push fit, the other a thread");
    }

    @Test
    void anUnreadJointSaysHowToWriteIt() {
        Check check = joint("bayonet female", "M42x0.75 male");
        assertThat(check.level()).isEqualTo(Check.Level.WARN);
        assertThat(check.text()).contains("\"bayonet female\" is not understood: write it as \"M48x0.75 male\"");
    }

    @Test
    void aHalfWrittenJointIsNotGuessed() {
        Check check = joint("M48x0.75 male", "");
        assertThat(check.level()).isEqualTo(Check.Level.WARN);
        assertThat(check.text()).isEqualTo("Corrector to spacer: not checked, the front of spacer is not written.");
    }

    /** ISO 261 knows no pitch of 0.57 mm. */
    @Test
    void aPitchThatNoStandardKnowsIsASlipOfThePen() {
        Check check = joint("M48x0.57 male", "M48x0.57 female");
        assertThat(check.level()).isEqualTo(Check.Level.WARN);
        assertThat(check.text()).contains("neither ISO 261 nor the inch series", "M48x0.75");
    }

    @Test
    void aFilterInsideDoesNotPartItsNeighbours() {
        assertThat(RigFigures.of(Rigs.heron()).checks())
                .extracting(Check::id)
                .contains("joint-corrector-spacer", "joint-spacer-camera");
    }

    @Test
    void partsOfOneNameKeepChecksApart() {
        RigSpec.TrainPart ring = part("ring", mm(5), "M48x0.75 female", "M48x0.75 male");
        assertThat(JointChecks.of(Rigs.with(ring, ring, ring).train()))
                .extracting(Check::id)
                .containsExactly("joint-ring-ring", "joint-ring-ring-2");
    }

    private static Check joint(String rear, String front) {
        RigSpec rig = Rigs.with(part("corrector", absent(), "", rear), part("spacer", mm(55), front, ""));
        return JointChecks.of(rig.train()).get(0);
    }
}
