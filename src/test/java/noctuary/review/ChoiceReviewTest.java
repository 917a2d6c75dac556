package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import noctuary.effect.Amount;
import noctuary.effect.Effect;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;
import noctuary.measure.VersionSheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processing choices on measured pictures, their effects planted: a noise ratio of so much with the choice and without. */
class ChoiceReviewTest {
    private static final String CALM = "noise reduction";

    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    /** Versions of one entry, each a name with its steps. */
    private void entry(int n, String... versions) {
        journal.night(
                String.format(Locale.ROOT, "2025-%02d-10", n),
                "wren",
                "terrace",
                "M " + n,
                0.8,
                "versions: [" + String.join(", ", versions) + "]");
    }

    private static String version(String name, String steps) {
        return "{name: " + name + ", from: stack, steps: [" + steps + "]}";
    }

    /** With and without, all else alike. */
    private void pair(int n) {
        entry(n, version("plain", "stretch: asinh 20"), version("calm", "stretch: asinh 20, " + CALM + ": 0.5"));
    }

    private Review review() {
        return journal.reviews(ChoiceReviewTest::measured)
                .around("choice-noise-reduction")
                .orElseThrow();
    }

    /** Half of the noise with the choice, all of it without, a little more from entry to entry. */
    private static List<VersionSheet> measured(EntrySheet sheet) {
        double own = sheet.entry().slug().hashCode() % 7 * 0.004;
        return sheet.entry().versions().stream()
                .map(v -> new VersionSheet(v, Optional.of(effect(calm(v) ? 0.5 + own : 1 - own)), "", List.of()))
                .toList();
    }

    private static boolean calm(Entry.Version version) {
        return version.steps().stream().anyMatch(s -> s.choice().equals(CALM));
    }

    private static Effect effect(double noise) {
        Amount none = Amount.absent("not planted");
        return new Effect(
                Optional.empty(),
                Optional.empty(),
                List.of(new Effect.Scale(1, Amount.of(noise))),
                none,
                none,
                new Effect.Neighbours(none, none),
                Optional.empty(),
                none,
                0,
                none,
                none,
                none,
                none,
                none,
                0,
                0,
                none,
                List.of(),
                false,
                "not planted");
    }

    @Test
    void versionsOfTheSameStackAreThePairsThatTell() {
        for (int n = 1; n <= 7; n++) {
            pair(n);
        }
        MeasureReview noise = review().primary().orElseThrow();
        assertThat(noise.nights().measure().id()).isEqualTo("noiseRatio");
        assertThat(noise.grounds().pairs()).isEqualTo(7);
        assertThat(noise.after().getAsDouble()).isCloseTo(0.5, within(0.03));
        assertThat(noise.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(noise.why()).startsWith("Noise left fell by").contains("7 entries without and 7 with");
        assertThat(review().verdict()).hasValue(Verdict.BETTER);
    }

    @Test
    void fourPairsAreTooFew() {
        for (int n = 1; n <= 4; n++) {
            pair(n);
        }
        assertThat(review().verdict()).hasValue(Verdict.TOO_FEW);
        assertThat(review().why()).contains("4 entries without and 4 with");
        assertThat(review().test().orElseThrow().sentence())
                .startsWith("Make two versions of one stack, one with noise reduction and one without")
                .contains("for 6 entries");
    }

    /** Without the choice, the stretch was always another: nothing can be put down to the choice. */
    @Test
    void otherStepsOnEitherSideConfound() {
        for (int n = 1; n <= 6; n++) {
            entry(
                    n,
                    n % 2 == 0
                            ? version("calm", "stretch: asinh 20, " + CALM + ": 0.5")
                            : version("plain", "stretch: asinh 90"));
        }
        assertThat(review().verdict()).hasValue(Verdict.CONFOUNDED);
        assertThat(review().why()).contains("do not overlap in other steps");
    }

    /** Of one image both versions, but each with other steps: no pair, although it is the same night. */
    @Test
    void unlikeVersionsOfOneImageAreNoPair() {
        for (int n = 1; n <= 7; n++) {
            entry(n, version("plain", "stretch: asinh 90"), version("calm", "stretch: asinh 20, " + CALM + ": 0.5"));
        }
        assertThat(review().verdict()).hasValue(Verdict.CONFOUNDED);
    }

    @Test
    void framesAndNightsWithoutPicturesDoNotCount() {
        pair(1);
        journal.night("2025-11-10", "wren", "terrace", "M 33", 0.8);
        assertThat(review().change().before().entries()).containsExactly("2025-01-10-m1");
        assertThat(review().absent())
                .filteredOn(a -> a.measure().id().equals("fwhmRatio"))
                .extracting(AbsentMeasure::why)
                .containsExactly("Not planted (without it).");
    }
}
