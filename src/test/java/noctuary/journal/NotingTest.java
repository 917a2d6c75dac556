package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotingTest {
    @TempDir
    private Path folder;

    private SmallJournal journal;

    @BeforeEach
    void journal() throws Exception {
        journal = new SmallJournal(folder.resolve("nights"));
        journal.file(
                "journal.yaml",
                "title: Nights above Averil",
                "site: terrace",
                "rig: heron",
                "archive: {main: ../../frames}");
        Files.createDirectories(folder.resolve("frames"));
    }

    private Path light(String name, String object, String utc, long seed) {
        return FrameDraft.empty(32, 24, seed)
                .card("OBJECT", "'" + object + "'")
                .card("DATE-OBS", "'" + utc + "'")
                .card("EXPTIME", "120.0")
                .card("FILTER", "'L'")
                .card("XPIXSZ", "3.3")
                .write(folder.resolve("frames").resolve(name));
    }

    private String text(Path note) throws Exception {
        return Files.readString(note);
    }

    @Test
    void eachTargetAndNightBecomesAnEntry() throws Exception {
        List<Path> frames = List.of(
                light("a.fits", "M27", "2025-06-14T22:00:00", 1),
                light("b.fits", "m 27", "2025-06-15T00:30:00", 2),
                light("c.fits", "NGC 6888", "2025-06-15T01:00:00", 3),
                light("d.fits", "M27", "2025-06-15T22:00:00", 4));
        Noting.Outcome outcome = Noting.note(journal.root(), frames);
        assertThat(outcome.written())
                .extracting(note -> note.getParent().getFileName().toString())
                .containsExactly("2025-06-14-m-27", "2025-06-14-ngc-6888", "2025-06-15-m-27");
    }

    @Test
    void framesInAnArchiveAreNamedByAPatternWhereItCatchesJustThem() throws Exception {
        Path a = light("night/a.fits", "M27", "2025-06-14T22:00:00", 1);
        Path b = light("night/b.fits", "M27", "2025-06-14T22:03:00", 2);
        Noting.Outcome whole = Noting.note(journal.root(), List.of(a, b));
        assertThat(text(whole.written().get(0))).contains("frames: [\"main:night/*.fits\"]");
        Path c = light("night/c.fits", "M57", "2025-06-14T23:00:00", 3);
        Noting.Outcome part = Noting.note(journal.root(), List.of(c));
        assertThat(text(part.written().get(0))).contains("frames: [\"main:night/c.fits\"]");
    }

    @Test
    void theRigOfThatPixelSizeIsProposedAndDoubtIsSaid() throws Exception {
        journal.file("rigs/wren.md", "---", "name: Wren", "camera: {pixel: 5.2 µm}", "---");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(light("a.fits", "M27", "2025-06-14T22:00:00", 1)));
        assertThat(text(outcome.written().get(0))).contains("rig: heron  # the only rig of that pixel size");
        journal.file("rigs/twin.md", "---", "name: Twin", "camera: {pixel: 3.3 µm}", "---");
        Noting.Outcome doubtful =
                Noting.note(journal.root(), List.of(light("b.fits", "M57", "2025-06-14T22:00:00", 2)));
        assertThat(text(doubtful.written().get(0))).contains("several rigs would fit");
    }

    @Test
    void hostileHeaderTextStaysText() throws Exception {
        Noting.Outcome outcome = Noting.note(
                journal.root(), List.of(light("a.fits", "\"]: {<script>} ../../x", "2025-06-14T22:00:00", 1)));
        Path note = outcome.written().get(0);
        assertThat(note.toRealPath())
                .startsWithRaw(journal.root().resolve("entries").toRealPath());
        assertThat(Checking.check(journal.root(), Progress.SILENT).problems()).noneMatch(p -> p.isFault());
    }

    @Test
    void anUnreadableFrameIsAProblemAndTheOthersAreNoted() throws Exception {
        Path bad = Files.writeString(folder.resolve("frames/bad.fits"), "not a frame");
        Noting.Outcome outcome =
                Noting.note(journal.root(), List.of(bad, light("a.fits", "M27", "2025-06-14T22:00:00", 1)));
        assertThat(outcome.problems()).hasSize(1);
        assertThat(outcome.written()).hasSize(1);
    }
}
