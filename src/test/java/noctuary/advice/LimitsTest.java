package noctuary.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Nights simulated pixel by pixel, one trouble each. The share over many nights: {@link LimitsBench}. */
class LimitsTest {
    @TempDir
    static Path folder;

    private static PlantedKeeper keeper;

    @BeforeAll
    static void aDozenNightsBehind() {
        keeper = new PlantedKeeper(folder, 3);
    }

    @ParameterizedTest
    @EnumSource(PlantedImage.Trouble.class)
    void whatWasPlantedIsNamedFirst(PlantedImage.Trouble trouble) {
        List<Finding> findings = keeper.next(new PlantedImage(trouble, 41));
        assertThat(findings).extracting(Finding::id).startsWith(trouble.finding);
        assertThat(findings.get(0).evidence()).isNotBlank();
    }

    /** Near a tenth of width or noise it may go unsaid, but nothing else is blamed. */
    @ParameterizedTest
    @EnumSource(PlantedImage.Trouble.class)
    void aFaintTroubleIsNamedRightlyOrNotAtAll(PlantedImage.Trouble trouble) {
        for (double share : new double[] {0.3, 0.6, 0.9}) {
            List<Finding> findings = keeper.next(PlantedImage.faint(trouble, 47, share));
            assertThat(findings)
                    .as(share + " of a mild trouble")
                    .extracting(Finding::id)
                    .isSubsetOf(trouble.finding, PlantedImage.Trouble.NONE.finding);
        }
    }

    /** Frames and their mean, nothing planted: the noise falls as the root of their number. */
    @Test
    void theNoiseOfACleanStackFallsWithTheRootOfTheTime() {
        NoiseGrowth growth = NoiseGrowth.of(keeper.alone(new PlantedImage(PlantedImage.Trouble.NONE, 48)))
                .orElseThrow();
        assertThat(growth.stack()).isCloseTo(growth.foretold(), withinPercentage(8));
        assertThat(growth.hasFloor()).isFalse();
        assertThat(growth.sentence()).endsWith("The stack is as quiet as its frames let it be.");
    }

    @Test
    void everySentenceSaysWhatWouldSettleIt() {
        for (PlantedImage.Trouble trouble : List.of(PlantedImage.Trouble.GUIDING, PlantedImage.Trouble.STREAKS)) {
            assertThat(keeper.next(new PlantedImage(trouble, 43))).allMatch(Finding::asksForAction);
        }
    }
}
