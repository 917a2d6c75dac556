package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import noctuary.fact.Problem;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site is left as it stands only when all that it was made from is as it was. */
class StandingTest {
    @TempDir
    private Path folder;

    private Path root;
    private SmallJournal journal;

    @BeforeEach
    void journal() throws IOException {
        root = folder.resolve("nights");
        journal = new SmallJournal(root);
        journal.file("journal.yaml", "title: Nights", "site: terrace", "rig: heron", "archive: {main: ../../frames}");
        journal.entry("m27", "title: A", "frames: ['*.fits', 'main:2025/*/*.fits']", "stack: ../../shared.fits");
        journal.frame("m27", "a.fits", FrameDraft.stars(3, 1).card("EXPTIME", "60.0"));
        archived("2025/one/b.fits", 2);
        FrameDraft.stars(3, 4).card("NCOMBINE", "9").write(root.resolve("shared.fits"));
    }

    private void archived(String name, long seed) {
        FrameDraft.stars(3, seed)
                .card("EXPTIME", "60.0")
                .write(folder.resolve("frames").resolve(name));
    }

    private boolean stands() throws Exception {
        return Rendering.render(root, root.resolve("output"), Progress.SILENT).standing();
    }

    /** After a change the site is written anew, once. */
    private void comesAnew() throws Exception {
        assertThat(stands()).isFalse();
        assertThat(stands()).isTrue();
    }

    @Test
    void aSecondRenderTouchesNothingAndSaysTheSame() throws Exception {
        journal.file("m27/entry.md", "---", "title: A", "frames: [gone.fits, a.fits]", "---");
        Rendering.Outcome first = Rendering.render(root, root.resolve("output"), Progress.SILENT);
        Map<String, FileTime> written = times();
        Rendering.Outcome second = Rendering.render(root, root.resolve("output"), Progress.SILENT);
        assertThat(second.standing()).isTrue();
        assertThat(second.problems()).isEqualTo(first.problems()).anyMatch(Problem::isFault);
        assertThat(second.files()).isEqualTo(first.files());
        assertThat(times()).isEqualTo(written);
    }

    private Map<String, FileTime> times() throws IOException {
        Map<String, FileTime> times = new TreeMap<>();
        try (Stream<Path> all = Files.walk(root.resolve("output"))) {
            for (Path file : all.toList()) {
                times.put(file.toString(), Files.getLastModifiedTime(file));
            }
        }
        return times;
    }

    @Test
    void notesRigsSettingsAndTemplatesCount() throws Exception {
        comesAnew();
        journal.file("m27/entry.md", "---", "title: B", "frames: [a.fits]", "---");
        comesAnew();
        journal.file("m31.md", "---", "exposure: [{count: 2, seconds: 60}]", "---");
        comesAnew();
        Files.delete(root.resolve("entries/m31.md"));
        comesAnew();
        Files.writeString(root.resolve("entries/rigs/heron.md"), "---\nname: Heron the second\n---\n");
        comesAnew();
        Files.createDirectories(root.resolve("site-templates/assets"));
        Files.writeString(root.resolve("site-templates/assets/site.css"), "body {}");
        comesAnew();
    }

    @Test
    void framesCountWhereverTheyLie() throws Exception {
        comesAnew();
        journal.frame("m27", "a.fits", FrameDraft.stars(3, 5).card("EXPTIME", "90.0"));
        comesAnew();
        archived("2025/one/b.fits", 6);
        comesAnew();
        archived("2025/one/c.fits", 7);
        comesAnew();
        archived("2025/two/d.fits", 8);
        comesAnew();
        Files.delete(folder.resolve("frames/2025/one/c.fits"));
        comesAnew();
        FrameDraft.stars(3, 9).card("NCOMBINE", "8").write(root.resolve("shared.fits"));
        comesAnew();
    }

    @Test
    void whatNotesAskedForInVainCounts() throws Exception {
        Files.delete(root.resolve("shared.fits"));
        stands();
        comesAnewUnlessTold();
        FrameDraft.stars(3, 4).write(root.resolve("shared.fits"));
        comesAnew();
    }

    /** The first site adds its folder to those that the complaint about the missing file was made from. */
    private void comesAnewUnlessTold() throws Exception {
        stands();
        assertThat(stands()).isTrue();
    }

    @Test
    void theFilesThatLinksLeadToCount() throws Exception {
        Path target = root.resolve("kept/m33.md");
        Files.createDirectories(target.getParent());
        Files.writeString(target, "---\ntitle: X\nexposure: [{count: 2, seconds: 60}]\n---\n");
        Files.createSymbolicLink(root.resolve("entries/m33.md"), target);
        comesAnew();
        Files.writeString(target, "---\ntitle: Y\nexposure: [{count: 2, seconds: 60}]\n---\n");
        comesAnew();
    }

    @Test
    void aSiteThatIsNotWholeIsWrittenAgain() throws Exception {
        comesAnew();
        Files.delete(root.resolve("output/nights/index.html"));
        comesAnew();
        Files.writeString(root.resolve("output/index.html"), "cut");
        comesAnew();
        assertThat(root.resolve("output/index.html")).content().contains("Nights");
    }

    @Test
    void damagedRecordsCostTimeOnly() throws Exception {
        comesAnew();
        Path record = Places.standing(root, root.resolve("output"));
        byte[] whole = Files.readAllBytes(record);
        for (int length = 0; length < whole.length; length += 97) {
            Files.write(record, java.util.Arrays.copyOf(whole, length));
            assertThat(Standing.find(record)).isEmpty();
        }
        comesAnew();
    }
}
