package noctuary.rig;

import static noctuary.rig.Rigs.absent;
import static noctuary.rig.Rigs.mm;
import static noctuary.rig.Rigs.part;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One trouble each in a rig that is otherwise in order: exactly that one is named, in words for a beginner. */
class TroubledTrainTest {
    private static final RigSpec.TrainPart CORRECTOR = part("corrector", absent(), "", "M48x0.75 male");
    private static final RigSpec.TrainPart SPACER = part("spacer", mm(37.5), "M48x0.75 female", "M42x0.75 male");
    private static final RigSpec.TrainPart CAMERA = part("camera", mm(17.5), "M42x0.75 female", "");

    @Test
    void theRigIsInOrderBeforehand() {
        assertThat(troubles(6.1, CORRECTOR, SPACER, CAMERA)).isEmpty();
    }

    /** M42 x 0.75 and M42 x 1 look alike; sizes and pitches as in ISO 261. */
    @Test
    void oneWrongThread() {
        RigSpec.TrainPart coarse = part("spacer", mm(37.5), "M48x0.75 female", "M42x1 male");
        assertThat(troubles(6.1, CORRECTOR, coarse, CAMERA)).singleElement().satisfies(check -> {
            assertThat(check.level()).isEqualTo(Check.Level.WRONG);
            assertThat(check.text())
                    .contains("Spacer to camera", "will not mate", "pitch is 1 mm on one side and 0.75 mm")
                    .contains("An adapter with M42x1 female in front and M42x0.75 male behind joins them");
        });
    }

    /** 55 mm as stated; 3.5 mm of glass (n 1.5168) ask for t (n - 1) / n = 1.19 mm more. */
    @Test
    void oneTrainTooShort() {
        RigSpec.TrainPart glass =
                new RigSpec.TrainPart("filter", absent(), mm(3.5), Optional.empty(), Optional.empty());
        assertThat(troubles(6.1, CORRECTOR, SPACER, glass, CAMERA))
                .singleElement()
                .satisfies(check -> {
                    assertThat(check.level()).isEqualTo(Check.Level.WRONG);
                    assertThat(check.text())
                            .startsWith("The sensor is 1.19 mm too close to the corrector")
                            .contains("Add a shim or a longer spacer: 1.19 mm more");
                });
    }

    /** 37.5 and 16.3 mm of metal where 55 are stated: 1.2 mm short, and nothing else is the matter. */
    @Test
    void oneTrainShortByItsMetalAlone() {
        RigSpec.TrainPart shorter = part("camera", mm(16.3), "M42x0.75 female", "");
        assertThat(troubles(6.1, CORRECTOR, SPACER, shorter)).singleElement().satisfies(check -> {
            assertThat(check.level()).isEqualTo(Check.Level.WRONG);
            assertThat(check.text())
                    .startsWith("The sensor is 1.2 mm too close to the corrector: 53.8 mm are there (spacer 37.5 mm + "
                            + "camera 16.3 mm), 55 mm are wanted. Add a shim or a longer spacer: 1.2 mm more");
        });
    }

    @Test
    void oneMountOverloaded() {
        assertThat(troubles(22, CORRECTOR, SPACER, CAMERA)).singleElement().satisfies(check -> {
            assertThat(check.level()).isEqualTo(Check.Level.WRONG);
            assertThat(check.text()).contains("22 kg of the 20 kg", "Take weight off", "may tip");
        });
    }

    private static List<Check> troubles(double massKg, RigSpec.TrainPart... train) {
        RigSpec rig = new RigSpec(
                new RigSpec.Optics(mm(150), mm(750), mm(0.95), mm(55), mm(44)),
                Rigs.heron().camera(),
                List.of(train),
                mm(20),
                List.of(new RigSpec.Load("tube", massKg)));
        return RigFigures.of(rig).checks().stream()
                .filter(check -> check.level() != Check.Level.OK)
                .toList();
    }
}
