package noctuary.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FairTestsTest {
    @TempDir
    private Path folder;

    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    /** Nights a side for a shift of one standard deviation at 80 %: 17, HANDBOOK 7.5 (scipy's noncentral t). */
    @Test
    void theKeepersOwnScatterGivesTheNumberOfNights() {
        double up = 0.8 * Math.exp(0.1 / Math.sqrt(2));
        double down = 0.8 * Math.exp(-0.1 / Math.sqrt(2));
        journal.night("2025-01-10", "wren", "terrace", "M 42", up)
                .night("2025-03-20", "wren", "terrace", "M 51", down)
                .night("2025-05-24", "heron", "terrace", "M 51", up)
                .night("2025-06-20", "heron", "terrace", "M 13", down);
        FairTest test =
                journal.reviews().around("rig-heron").orElseThrow().test().orElseThrow();
        assertThat(test.scatterPercent()).isBetween(9.9, 10.1);
        assertThat(test.wantedPercent()).isEqualTo(10);
        assertThat(test.nightsEachSide()).isEqualTo(17);
        assertThat(test.target()).as("the one on both sides").isEqualTo("M 51");
        assertThat(test.withinNights()).isFalse();
        assertThat(test.question()).isEqualTo("Is the guiding RMS better with Heron than with Wren?");
        assertThat(test.sentence()).contains("M 51", "17 nights either way", "10 %");
    }

    @Test
    void oneNightASideTellsNoScatterAndProposesNothing() {
        journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8)
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6);
        assertThat(journal.reviews().around("rig-heron").orElseThrow().test()).isEmpty();
    }
}
