package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FramePatternsTest {
    private static final String SLUG = "2025-06-14-m-27";

    @TempDir
    private Path folder;

    private SmallJournal journal;

    @BeforeEach
    void layOut() {
        journal = new SmallJournal(folder);
    }

    private List<Path> frames(String... names) throws IOException {
        List<Path> frames = new ArrayList<>();
        for (String name : names) {
            Path frame = journal.root().resolve("entries").resolve(SLUG).resolve(name);
            Files.createDirectories(frame.getParent());
            frames.add(Files.writeString(frame, name));
        }
        return frames;
    }

    private List<String> patterns(List<Path> frames) {
        return FramePatterns.of(Journal.read(journal.root()), SLUG, frames).orElseThrow();
    }

    @Test
    void oneStarCatchesAFolderOfNothingElse() throws IOException {
        assertThat(patterns(frames("lights/a.fits", "lights/b.fits"))).containsExactly("lights/*.fits");
    }

    @Test
    void framesAmongOthersAreNamedOneByOne() throws IOException {
        List<Path> all = frames("lights/a.fits", "lights/b.fits", "lights/dark.fits");
        assertThat(patterns(all.subList(0, 2))).containsExactly("lights/a.fits", "lights/b.fits");
    }

    @Test
    void namesWithSignsOfPatternsFindTheirFrames() throws IOException {
        List<Path> all = frames("m27 [Ha] 22:10:00.fits", "m27 {L} what?.fits", "dark.fits");
        List<Path> lights = all.subList(0, 2);
        List<String> written = patterns(lights).stream().map(p -> "'" + p + "'").toList();
        journal.entry(SLUG, "title: A", "frames: " + written);
        Journal read = Journal.read(journal.root());
        assertThat(read.problems()).isEmpty();
        assertThat(read.entries()).singleElement().extracting(Entry::frames).isEqualTo(lights);
    }
}
