package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.entry.Entry;
import org.junit.jupiter.api.Test;

class StepFindingsTest {
    private static final Amount NONE = Amount.absent("not looked for");

    private static Effect effect(double noise, int lost, double cut, double green) {
        return new Effect(
                Optional.of(new Effect.Laid(90, 0.1, 1, 0, false, false)),
                Optional.of(new Effect.Stretch(Amount.of(40), 0.2, 0.01)),
                List.of(new Effect.Scale(1, Amount.of(noise))),
                NONE,
                NONE,
                new Effect.Neighbours(Amount.of(0), Amount.of(0.1)),
                Optional.of(new StarFates(List.of(new StarFates.Bin(0, 10, 100 - lost, lost)), 0)),
                Amount.of(1.01),
                0.002,
                NONE,
                Amount.of(0.98),
                NONE,
                Amount.of(0),
                Amount.of(0.2),
                0.2,
                0.02,
                Amount.of(cut),
                List.of(-green / 2, green, -green / 2),
                false,
                "");
    }

    private static List<Observation> findings(Effect effect) {
        List<Entry.Step> steps =
                List.of(new Entry.Step("stretch", "asinh 40"), new Entry.Step("noise reduction", "0.9"));
        return StepFindings.of(new Entry.Version("heavy", Optional.empty(), "stack", steps), effect);
    }

    @Test
    void plantedCostsBecomeSentences() {
        assertThat(findings(effect(0.39, 23, 4.04, 3.2)))
                .extracting(Observation::text)
                .containsExactly(
                        "Noise reduction 0.9 took 61 % of the noise and 23 % of the faint stars",
                        "The black point cuts 4.0 % of the true background", "Green background by 3 %");
    }

    @Test
    void aStepThatCostsNothingIsSilent() {
        assertThat(findings(effect(0.97, 0, 0.1, 0.5))).isEmpty();
    }

    @Test
    void everyFindingHasItsEvidence() {
        assertThat(findings(effect(0.39, 23, 4.04, 3.2)))
                .allSatisfy(f -> assertThat(f.evidence()).isNotBlank());
    }

    @Test
    void aPictureThatCannotBeComparedSaysNothing() {
        Effect blind = new Effect(
                Optional.empty(),
                Optional.empty(),
                List.of(),
                NONE,
                NONE,
                new Effect.Neighbours(NONE, NONE),
                Optional.empty(),
                NONE,
                0,
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                0,
                0,
                NONE,
                List.of(),
                false,
                "its stars do not fall on those of the stack");
        assertThat(findings(blind)).isEmpty();
        assertThat(blind.noiseRatio(1).why()).contains("stars");
    }
}
