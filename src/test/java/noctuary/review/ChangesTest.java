package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesTest {
    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    private PlantedJournal bothRigs() {
        return journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8, "changes: [everything new]")
                .night("2025-03-20", "wren", "terrace", "M 51", 0.8)
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6, "changes: [the long tube]")
                .night("2025-06-20", "heron", "terrace", "M 13", 0.6)
                .night("2025-08-20", "heron", "terrace", "M 27", 0.6);
    }

    @Test
    void aNewRigComesAfterTheOneUsedLast() {
        Change change = bothRigs().change("rig-heron");
        assertThat(change.kind()).isEqualTo(ChangeKind.RIG);
        assertThat(change.date()).hasValue(LocalDate.parse("2025-05-20"));
        assertThat(change.sentence()).isEqualTo("Heron instead of Wren");
        assertThat(change.before().entries()).containsExactly("2025-01-10-m42", "2025-03-20-m51");
        assertThat(change.after().entries())
                .as("until its next part changed")
                .containsExactly("2025-05-24-m51", "2025-06-20-m13");
        assertThat(change.before().id()).isEqualTo("wren");
        assertThat(change.after().id()).isEqualTo("heron");
        assertThat(change.words()).containsExactly("the long tube");
    }

    @Test
    void aRigUsedAlongsideTheNewOneKeepsItsNights() {
        bothRigs().night("2025-07-01", "wren", "terrace", "M 57", 0.8);
        assertThat(journal.change("rig-heron").before().entries())
                .containsExactly("2025-01-10-m42", "2025-03-20-m51", "2025-07-01-m57");
    }

    @Test
    void aPartDividesItsRigsNightsByItsDate() {
        Change change = bothRigs().change("rig-heron-2025-08-01");
        assertThat(change.sentence()).isEqualTo("Heron: spacer 17.7 mm instead of spacer 16.5 mm");
        assertThat(change.part()).hasValue("spacer");
        assertThat(change.before().entries()).containsExactly("2025-05-24-m51", "2025-06-20-m13");
        assertThat(change.after().entries()).containsExactly("2025-08-20-m27");
    }

    @Test
    void sidesKeepToTheSitesTheyShare() {
        bothRigs().night("2025-06-25", "heron", "ridge", "M 13", 0.6);
        assertThat(journal.change("rig-heron").after().entries()).doesNotContain("2025-06-25-m13");
    }

    @Test
    void withoutASharedSiteTheNightsStayToBeShown() {
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8).night("2025-06-25", "heron", "ridge", "M 13", 0.6);
        assertThat(journal.change("rig-heron").after().entries()).containsExactly("2025-06-25-m13");
    }

    @Test
    void aMoveComparesTheSitesWithTheSameRigAndReturnsCount() {
        bothRigs()
                .night("2025-09-10", "heron", "ridge", "M 31", 0.6, "changes: [the ridge]")
                .night("2025-10-10", "heron", "terrace", "M 31", 0.6);
        Change change = journal.change("site-ridge");
        assertThat(change.sentence()).isEqualTo("Ridge instead of Terrace");
        assertThat(change.date()).hasValue(LocalDate.parse("2025-09-10"));
        assertThat(change.before().entries())
                .as("with the spacer of that time, before and after")
                .containsExactly("2025-08-20-m27", "2025-10-10-m31");
        assertThat(change.after().entries()).containsExactly("2025-09-10-m31");
        assertThat(change.words()).containsExactly("the ridge");
        assertThat(journal.changes()).extracting(Change::id).doesNotContain("site-terrace");
    }

    @Test
    void aWayOfWorkingDividesNightsAlikeInRigAndSite() {
        bothRigs()
                .night("2025-03-30", "wren", "terrace", "M 81", 0.7, "changes: [cables in one bundle, longer shield]");
        Change first = journal.change("way-2025-03-30-m81");
        assertThat(first.sentence()).isEqualTo("cables in one bundle");
        assertThat(journal.change("way-2025-03-30-m81-2").sentence()).isEqualTo("longer shield");
        assertThat(first.before().entries()).containsExactly("2025-01-10-m42", "2025-03-20-m51");
        assertThat(first.after().entries()).containsExactly("2025-03-30-m81");
    }

    @Test
    void theFirstNoteAndTheFirstAfterAnotherChangeMakeNoWay() {
        assertThat(bothRigs().changes()).extracting(Change::id).containsExactly("rig-heron", "rig-heron-2025-08-01");
    }

    @Test
    void aChoiceStandsAgainstItsAbsence() {
        String gentle = "versions: [{name: gentle, from: stack, steps: [stretch: asinh 12]}]";
        String heavy = "versions: [{name: heavy, from: stack, steps: [stretch: asinh 12, noise reduction: 0.9]}]";
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8, gentle)
                .night("2025-03-20", "wren", "terrace", "M 51", 0.8, heavy)
                .night("2025-04-20", "wren", "terrace", "M 13", 0.8);
        assertThat(journal.changes())
                .extracting(Change::id)
                .as("the stretch is in every version; Heron waits for its first night")
                .containsExactly("rig-heron", "choice-noise-reduction");
        Change change = journal.change("choice-noise-reduction");
        assertThat(change.before().entries()).containsExactly("2025-01-10-m42");
        assertThat(change.after().entries()).containsExactly("2025-03-20-m51");
        assertThat(journal.reviews()
                        .around("choice-noise-reduction")
                        .orElseThrow()
                        .verdict())
                .isEmpty();
    }

    @Test
    void aNewRigWithoutANightWaitsForOne() {
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8);
        Review review = journal.reviews().around("rig-heron").orElseThrow();
        assertThat(review.verdict()).hasValue(Verdict.TOO_FEW);
        assertThat(review.why()).isEqualTo("There is no night after yet.");
        assertThat(review.measures()).isEmpty();
    }

    @Test
    void whatElseWasNotTheSameIsSaid() {
        bothRigs().night("2025-04-02", "wren", "terrace", "M 81", 0.7, "changes: [longer shield]");
        assertThat(journal.reviews().around("rig-heron").orElseThrow().coincidences())
                .contains(
                        "Optics: aperture 80 mm → 150 mm, focal length 480 mm → 750 mm, reducer 0.8 → 0.95.",
                        "Targets on both sides: M 51; only before: M 42, M 81; only after: M 13.",
                        "Nights from 2025-01-10 to 2025-04-02 before, from 2025-05-24 to 2025-06-20 after.",
                        "On 2025-04-02 also: longer shield.");
    }

    @Test
    void entriesWhoseNightNobodyTellsAreLeftOutByName() {
        bothRigs();
        journal.small().entry("undated", "target: M 1", "rig: heron", "exposure: [{count: 1, seconds: 60}]");
        assertThat(journal.reviews().around("rig-heron").orElseThrow().leftOut())
                .containsExactly("undated");
    }
}
