package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileFinderTest {
    @TempDir
    Path dir;

    private Path root;
    private Path folder;
    private final Ledger ledger = new Ledger();

    @BeforeEach
    void layOut() throws IOException {
        root = Files.createDirectories(dir.resolve("journal")).toRealPath();
        folder = Files.createDirectories(root.resolve("entries/m27"));
        for (String name : List.of(
                "journal/entries/m27/b.fits",
                "journal/entries/m27/a.fits",
                "journal/entries/m27/.a.fits",
                "journal/entries/m27/sub/deep/c.fits",
                "journal/shared.fits",
                "outside/secret.fits",
                "archive/n1/d.fits")) {
            Files.createDirectories(dir.resolve(name).getParent());
            Files.createFile(dir.resolve(name));
        }
        Files.createSymbolicLink(folder.resolve("link.fits"), dir.resolve("outside/secret.fits"));
        Files.createSymbolicLink(folder.resolve("away"), dir.resolve("outside"));
        Files.createSymbolicLink(folder.resolve("loop"), folder);
        Files.createSymbolicLink(folder.resolve("inner.fits"), root.resolve("shared.fits"));
    }

    private List<String> find(String... patterns) {
        var finder = new FileFinder(new Reach(
                root, Map.of("main", dir.resolve("archive")), new Trail(Branches.unknown(root.resolve("entries")))));
        List<Typed<String>> typed = List.of(patterns).stream()
                .map(pattern -> new Typed<>(pattern, "entries/m27/entry.md", 3, "frames", pattern))
                .toList();
        return finder.all(typed, folder, new Margin("entries/m27/entry.md", ledger)).stream()
                .map(path -> path.getFileName().toString())
                .toList();
    }

    @Test
    void matchesAreSortedAndEachFileIsFoundOnce() {
        assertThat(find("[ab].fits", "a.fits", "./b.fits", "sub/../a.fits")).containsExactly("a.fits", "b.fits");
        assertThat(ledger.problems()).isEmpty();
    }

    @Test
    void hiddenFilesAreNotFrames() {
        assertThat(find("?a.fits")).isEmpty();
        assertThat(find(".a.fits")).isEmpty();
        assertThat(ledger.problems()).hasSize(2).allMatch(Problem::isFault);
    }

    @Test
    void pathsMayWalkWithinTheJournalAndTheArchive() {
        assertThat(find("../../shared.fits", "sub/**/*.fits", "archive:n?/*.fits", "main:**/d.fits", "inner.fits"))
                .containsExactlyInAnyOrder("shared.fits", "c.fits", "d.fits", "inner.fits");
        assertThat(ledger.problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "link.fits",
                "l*.fits",
                "away/secret.fits",
                "away/*.fits",
                "a*/*.fits",
                "../../../outside/secret.fits",
                "../../../*/*.fits",
                "/etc/passwd",
                "/etc/*",
                "~/x",
                "main:../outside/*.fits",
                "main:/etc/passwd",
                "archive:../journal/../outside/secret.fits",
                "C:/x.fits",
                "a.fits/../../../../outside/secret.fits",
                "..\\x.fits",
                "sub/../../../../outside/secret.fits",
                "file:///etc/passwd"
            })
    void nothingOutsideIsEverFound(String pattern) {
        assertThat(find(pattern)).isEmpty();
        assertThat(ledger.problems()).hasSize(1).allMatch(Problem::isFault);
        assertThat(ledger.problems().get(0).where()).isEqualTo("entries/m27/entry.md, line 3, key frames");
    }

    @Test
    void aLinkThatLeadsOutCostsItselfOnly() {
        assertThat(find("*.fits")).containsExactly("a.fits", "b.fits", "inner.fits");
        assertThat(ledger.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.isFault()).isTrue();
            assertThat(problem.what()).isEqualTo("\"link.fits\" leads out of the journal");
        });
    }

    /** A reader of a published page must not learn where the keeper's files lie. */
    @ParameterizedTest
    @ValueSource(strings = {"x.fits", "nowhere/*.fits", "main:n2/*.fits", "link.fits", "main:n1/e.fits"})
    void problemsDoNotTellWhereTheJournalLies(String pattern) {
        find(pattern);
        Problem problem = ledger.problems().get(0);
        assertThat(problem.what() + problem.hint()).doesNotContain(dir.toString());
    }

    @Test
    void circlesOfLinksEnd() {
        assertThat(find("**/c.fits")).containsExactly("c.fits");
    }

    @ParameterizedTest
    @CsvSource({
        "*.fits, a.fits, true",
        "*.fits, a.fit, false",
        "a*b*c, aXbXbXc, true",
        "a*b*c, aXbXbX, false",
        "?.fits, ab.fits, false",
        "[a-c]x, bx, true",
        "[!a-c]x, bx, false",
        "[]x, []x, true",
        "'{one,two}*', two3, true",
        "'{one,two}*', three, false",
        "**, anything, true",
        "(a+)+$, aaaa, false"
    })
    void globsMatchWholeNames(String pattern, String name, boolean expected) throws Unfit {
        assertThat(Glob.of(pattern).matches(name)).isEqualTo(expected);
    }
}
