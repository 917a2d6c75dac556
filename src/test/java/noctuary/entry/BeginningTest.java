package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BeginningTest {
    @TempDir
    Path dir;

    @Test
    void aNewJournalReadsWithoutProblems() throws IOException {
        List<Path> written = Beginning.layOut(dir.resolve("new"));
        assertThat(written).hasSize(8).allMatch(Files::isRegularFile);
        Journal journal = Journal.read(dir.resolve("new"));
        assertThat(journal.problems()).isEmpty();
        assertThat(journal.rigs()).containsOnlyKeys("first-rig");
        assertThat(journal.sites()).containsOnlyKeys("home");
        assertThat(journal.entries()).isEmpty();
        assertThat(journal.settings().publish()).isEqualTo(new Settings.Publish(false, false));
    }

    /** The examples are a promise: with every comment sign taken away they must read as they stand. */
    @Test
    void everyCommentedExampleIsValid() throws IOException {
        Beginning.layOut(dir);
        Path entries = dir.resolve("entries");
        for (String name : List.of("journal.yaml", "rigs/first-rig.md", "sites/home.md", "first-night.md.example")) {
            Path file = entries.resolve(name);
            String text = Files.readString(file)
                    .replaceAll("(?m)^# ((?:[a-z][a-z ]*:| +- \\{).*)$", "$1")
                    .replace("an-earlier-entry#cabling", "earlier#cabling");
            Files.writeString(entries.resolve(name.replace(".example", "")), text);
        }
        for (String file : List.of("lights/a.fits", "m42.fits", "gentle.tif", "heavy.png")) {
            Files.createDirectories(entries.resolve("lights"));
            Files.createFile(entries.resolve(file));
        }
        Files.createDirectories(dir.resolve("frames"));
        Files.writeString(
                entries.resolve("earlier.md"),
                "---\nexposure: [{count: 1, seconds: 1}]\nlessons: [{about: cabling, do: label}]\n---\n");
        Journal journal = Journal.read(dir);
        assertThat(journal.problems()).isEmpty();
        RigNote rig = journal.rigs().get("first-rig");
        assertThat(rig.train()).hasSize(5);
        assertThat(rig.optics()).hasSize(5);
        Entry entry = journal.entries().get(1);
        assertThat(entry.closes()).containsExactly("earlier#cabling");
        assertThat(entry.versions()).hasSize(2);
    }

    @Test
    void neverWritesOverAJournal() throws IOException {
        Files.createDirectories(dir.resolve("entries"));
        Path note = Files.writeString(dir.resolve("entries/mine.md"), "---\n---\n");
        assertThatThrownBy(() -> Beginning.layOut(dir))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("already holds a journal");
        assertThat(Files.readString(note)).isEqualTo("---\n---\n");
        assertThat(dir.resolve("entries/journal.yaml")).doesNotExist();
    }
}
