package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A changed note wakes its own files and no others: with all measurements gone, only these are measured again. */
class RestingFilesTest {
    @TempDir
    private Path folder;

    @Test
    void filesOfEntriesThatDidNotChangeRest() throws Exception {
        Path root = folder.resolve("nights");
        SmallJournal journal = new SmallJournal(root);
        for (int e = 0; e < 4; e++) {
            note(journal, e, "Night " + e);
            for (int f = 0; f < 3; f++) {
                journal.frame(
                        "e" + e,
                        "f" + f + ".fits",
                        FrameDraft.stars(3 + 0.2 * f, e)
                                .card("EXPTIME", "60.0")
                                .card("DATE-OBS", "'2025-06-1" + e + "T22:3" + f + ":00'"));
            }
        }
        assertThat(render(root).measuredNow()).isEqualTo(12);
        FolderTree.delete(root.resolve(".noctuary/measured"));
        note(journal, 2, "Night 2, told anew");
        assertThat(render(root).measuredNow()).isEqualTo(3);
        assertThat(Files.readString(root.resolve("output/index.html"))).contains("told anew");
        FolderTree.delete(root.resolve(".noctuary/measured"));
        Files.createDirectories(root.resolve("site-templates"));
        Files.writeString(root.resolve("site-templates/find.ftlh"), "<p>mine</p>");
        assertThat(render(root).measuredNow()).as("a template changed").isZero();
        assertThat(Rendering.anew(root, root.resolve("output"), Progress.SILENT).measuredNow())
                .as("all pages once more")
                .isZero();
    }

    private static Rendering.Outcome render(Path root) throws Exception {
        return Rendering.render(root, root.resolve("output"), Progress.SILENT);
    }

    private static void note(SmallJournal journal, int e, String title) {
        journal.entry(
                "e" + e,
                "title: " + title,
                "target: M 27",
                "frames: ['*.fits']",
                "versions: [{name: plain, from: stack, steps: [stretch: asinh 12]}]");
    }
}
