package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import noctuary.fact.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A header whose pixel is not that of the rig's note. */
class PixelSizeTest {
    @TempDir
    Path folder;

    @Test
    void aPixelSizeThatDisagreesIsSaidInWordsForABeginner() {
        EntrySheet sheet = new SmallJournal(folder)
                .entry("night", "rig: heron", "frames: [\"*.fits\"]")
                .frame(
                        "night",
                        "l1.fits",
                        FrameDraft.empty(200, 150, 1).card("XPIXSZ", "3.76").card("FOCALLEN", "712.0"))
                .sheet("night");
        assertThat(sheet.problems())
                .filteredOn(p -> p.place().equals("pixel pitch"))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.severity()).isEqualTo(Problem.Severity.NOTICE);
                    assertThat(p.what()).isEqualTo("the rig says 3.3 µm, the header says 3.76 µm");
                    assertThat(p.hint()).contains("correct the other if it is wrong");
                });
    }
}
