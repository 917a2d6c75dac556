package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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

    private Path light(String name, String object, String utc, long seed) throws Exception {
        Files.createDirectories(folder.resolve("frames").resolve(name).getParent());
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
        assertThat(part.unreached()).isEmpty();
    }

    @Test
    void framesBeyondTheJournalAreCountedAndTheirFolderIsTold() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk/a"));
        Path a = Files.move(light("a.fits", "M27", "2025-06-14T22:00:00", 1), disk.resolve("a.fits"));
        Path b = Files.move(light("b.fits", "M57", "2025-06-14T23:00:00", 2), disk.resolveSibling("b.fits"));
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(a, b));
        assertThat(outcome.unreached()).contains(folder.resolve("disk"));
        assertThat(text(outcome.written().get(0)))
                .contains("exposure: [{count: 1")
                .doesNotContain("\nframes:");
        assertThat(Noting.note(journal.root(), List.of(a, b)).unreached()).isEmpty();
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

    private Path draft(String name, String object, String utc, long seed, String... cards) throws Exception {
        FrameDraft draft = FrameDraft.empty(32, 24, seed).card("DATE-OBS", "'" + utc + "'");
        if (!object.isEmpty()) {
            draft.card("OBJECT", "'" + object + "'");
        }
        for (String card : cards) {
            String[] parts = card.split("=", 2);
            draft.card(parts[0], parts[1]);
        }
        Path place = folder.resolve(name);
        Files.createDirectories(place.getParent());
        return draft.write(place);
    }

    @Test
    void aMessyFolderIsSortedByTargetNightAndRig() throws Exception {
        journal.file("rigs/wren.md", "---", "name: Wren", "camera: {pixel: 5.2 µm}", "---");
        light("a.fits", "M27", "2025-06-14T22:00:00", 1);
        light("deep/er/b.fits", "M27", "2025-06-14T22:10:00", 2);
        draft("frames/w.fits", "M27", "2025-06-14T22:05:00", 3, "EXPTIME=60.0", "XPIXSZ=5.2");
        draft("frames/dark.fits", "", "2025-06-14T22:07:00", 4, "IMAGETYP='Dark'", "EXPTIME=60.0");
        Files.writeString(folder.resolve("frames/notes.txt"), "not a frame");
        Files.writeString(folder.resolve("frames/.hidden.fits"), "not a frame");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(folder.resolve("frames")));
        assertThat(outcome.written())
                .extracting(note -> note.getParent().getFileName().toString())
                .containsExactlyInAnyOrder("2025-06-14-m-27-heron", "2025-06-14-m-27-wren");
        assertThat(outcome.skipped()).isEqualTo(1);
        assertThat(outcome.problems()).isEmpty();
        assertThat(Checking.check(journal.root(), Progress.SILENT).problems()).noneMatch(p -> p.isFault());
    }

    @Test
    void aStackIsNotAFrame() throws Exception {
        light("a.fits", "M27", "2025-06-14T22:00:00", 1);
        draft("frames/sum.fits", "M27", "2025-06-14T22:00:00", 2, "EXPTIME=120.0", "NCOMBINE=40", "XPIXSZ=3.3");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(folder.resolve("frames")));
        assertThat(text(outcome.written().get(0)))
                .contains("frames: [\"main:a.fits\"]", "stack: \"main:sum.fits\"", "1 × 120 s through L.");
        assertThat(Checking.check(journal.root(), Progress.SILENT).problems()).noneMatch(p -> p.isFault());
    }

    @Test
    void aCopyOfAnExposureCountsOnce() throws Exception {
        journal.file("journal.yaml", "title: Nights above Averil", "site: terrace", "rig: heron");
        light("a.fits", "M27", "2025-06-14T22:00:00", 1);
        light("a-calibrated.fits", "M27", "2025-06-14T22:00:00", 2);
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(folder.resolve("frames")));
        assertThat(text(outcome.written().get(0))).contains("exposure: [{count: 1, seconds: 120, filter: \"L\"}]");
    }

    @Test
    void coordinatesNameATargetThatNoCardNames() throws Exception {
        Path frame = draft("frames/a.fits", "", "2025-06-14T22:00:00", 1, "EXPTIME=60.0", "RA=299.90", "DEC=22.72");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(frame));
        assertThat(text(outcome.written().get(0))).contains("target: \"M 27\"  # no OBJECT card");
    }

    @Test
    void theHintForFramesFarAwayNamesTheirOwnEnding() throws Exception {
        journal.file("journal.yaml", "title: Nights above Averil", "rig: heron");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(light("a.fit", "M27", "2025-06-14T22:00:00", 1)));
        assertThat(text(outcome.written().get(0))).contains("main:*.fit\"");
    }

    @Test
    void brokenSettingsAreSaidAndTheNoteIsWrittenAllTheSame() throws Exception {
        journal.file("journal.yaml", "title: Nights: above", "rigg: heron");
        Noting.Outcome outcome = Noting.note(journal.root(), List.of(light("a.fits", "M27", "2025-06-14T22:00:00", 1)));
        assertThat(outcome.problems()).isNotEmpty().allMatch(p -> p.file().endsWith("journal.yaml"));
        assertThat(outcome.written()).hasSize(1);
    }

    @Test
    void aPlaceWithoutFramesIsRefused() throws Exception {
        Files.createDirectories(folder.resolve("void"));
        assertThatThrownBy(() -> Noting.note(journal.root(), List.of(folder.resolve("void"))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("holds no FITS file");
        assertThatThrownBy(() -> Noting.note(journal.root(), List.of(folder.resolve("nowhere.fits"))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("does not exist");
    }
}
