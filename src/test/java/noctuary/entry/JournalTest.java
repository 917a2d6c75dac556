package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {
    private static final String KEYS = "---\nexposure: {count: 1, seconds: 1}\n---\n";

    @TempDir
    Path root;

    @Test
    void aFolderWithoutEntriesIsAnEmptyJournalWithOneFault() {
        Journal journal = Journal.read(root);
        assertThat(NoteSpec.problems(journal))
                .containsExactly("entries: this folder is not there; lay out a journal with: noctuary begin DIR");
        assertThat(journal.entries()).isEmpty();
        assertThat(journal.settings().publish()).isEqualTo(new Settings.Publish(false, false));
    }

    @Test
    void aFolderThatIsNotThereIsReadAsEmpty() {
        assertThat(Journal.read(root.resolve("nowhere")).problems()).hasSize(1);
    }

    @Test
    void theSameFilesGiveTheSameJournal() throws IOException {
        for (NoteSpec spec : NoteSpec.all().subList(0, 12)) {
            spec.layOut(root);
        }
        assertThat(Journal.read(root))
                .isEqualTo(Journal.read(root))
                .hasToString(Journal.read(root).toString());
    }

    @Test
    void rigsStandInOrderOfTheirFirstUse() throws IOException {
        Files.createDirectories(root.resolve("entries/rigs"));
        Files.writeString(root.resolve("entries/rigs/a.md"), "---\nname: A\n---\n");
        Files.writeString(root.resolve("entries/rigs/b.md"), "---\nname: B\nin use: 2026-01-01 on\n---\n");
        Files.writeString(root.resolve("entries/rigs/c.md"), "---\nname: C\nin use: 2025-01-01 on\n---\n");
        assertThat(Journal.read(root).rigs().keySet()).containsExactly("c", "b", "a");
    }

    @Test
    void aNoteThatLinksOutOfTheJournalIsNotRead(@TempDir Path elsewhere) throws IOException {
        Files.createDirectories(root.resolve("entries/m27"));
        Path note = Files.writeString(elsewhere.resolve("secret.md"), KEYS + "secret");
        Files.createSymbolicLink(root.resolve("entries/m31.md"), note);
        Files.createSymbolicLink(root.resolve("entries/m27/entry.md"), note);
        Files.createSymbolicLink(root.resolve("entries/journal.yaml"), note);
        Journal journal = Journal.read(root);
        assertThat(journal.entries()).isEmpty();
        assertThat(NoteSpec.problems(journal))
                .filteredOn(problem -> problem.contains("leads out of the journal"))
                .hasSize(3);
    }

    @Test
    void problemsStandByFileAndLine() throws IOException {
        Files.createDirectories(root.resolve("entries"));
        Files.writeString(root.resolve("entries/b.md"), "---\nz: 1\n\n\n\n\n\n\n\ny: 1\nexposure: {count: 0}\n---\n");
        Files.writeString(root.resolve("entries/a.md"), "---\nz: 1\n---\n");
        assertThat(Journal.read(root).problems())
                .extracting(problem -> problem.file() + " " + problem.place())
                .containsSubsequence(
                        "entries/a.md line 2, key z",
                        "entries/b.md line 2, key z",
                        "entries/b.md line 10, key y",
                        "entries/b.md line 11, key count",
                        "entries/journal.yaml ");
    }
}
