package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.keep.KeptFile;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.site.Piece;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A journal that somebody else packed, with its site, its cache and its templates, and with symbolic links to files of
 * whoever unpacks it: none of these may be found in the site.
 */
class ForeignJournalTest {
    private static final String SECRET = "BEGIN-PRIVATE-KEY";

    @TempDir
    Path folder;

    private Path root;
    private Path output;
    private Path secret;

    @BeforeEach
    void unpack() throws Exception {
        root = folder.resolve("nights");
        output = root.resolve("output");
        secret = Files.writeString(folder.resolve("id.txt"), SECRET + "\n");
        new SmallJournal(root)
                .entry("a", "frames: [a.fits]")
                .frame("a", "a.fits", FrameDraft.stars(3, 1).card("EXPTIME", "60.0"));
        render();
        render();
    }

    private Rendering.Outcome render() throws IOException, RefusedException {
        return Rendering.anew(root, output, Progress.SILENT);
    }

    private List<Path> files(Path below) throws IOException {
        try (Stream<Path> all = Files.walk(below)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    private void assertKeptSecret() throws IOException {
        for (Path file : files(output)) {
            assertThat(Files.readString(file, StandardCharsets.ISO_8859_1))
                    .as(file.toString())
                    .doesNotContain(SECRET);
        }
        assertThat(output.resolve("entries/a/index.html")).exists();
    }

    private void link(Path place) throws IOException {
        Files.createDirectories(place.getParent());
        Files.deleteIfExists(place);
        Files.createSymbolicLink(place, secret);
    }

    @Test
    void aHiddenLinkInItsSiteIsNotFollowed() throws Exception {
        link(output.resolve(".htaccess"));
        render();
        assertKeptSecret();
    }

    /** Every file deep in the cache a link: pictures are drawn again, and nothing is written through the links. */
    @Test
    void linksInItsCacheAreNotFollowed() throws Exception {
        Path cache = root.resolve(".noctuary");
        List<Path> kept =
                files(cache).stream().filter(f -> !f.getParent().equals(cache)).toList();
        assertThat(kept).anyMatch(f -> f.toString().endsWith(".jpg"));
        assertThat(kept).anyMatch(f -> f.toString().endsWith(".kept"));
        for (Path file : kept) {
            link(file);
        }
        render();
        assertKeptSecret();
        assertThat(secret).hasContent(SECRET);
    }

    /** A record that counts a file of ours among those of the site before, which is nothing of the next. */
    @Test
    void aRecordOfFilesOutsideTheSiteIsNotBelieved() throws Exception {
        ShownFiles spare = ShownFiles.of(root, output).ofSpare();
        Path before = root.resolve(".noctuary/spare")
                .resolve(Places.standing(root, output).getFileName());
        FolderTree.delete(before);
        Files.createDirectories(before);
        String inside = "x" + secret.toString().substring(1);
        spare.keep(Standing.site(before), Map.of("ours", new Piece("old", List.of(inside))));
        String record = new String(KeptFile.readSummed(spare.place()), StandardCharsets.ISO_8859_1);
        KeptFile.writeSummed(
                spare.place(), record.replace(inside, secret.toString()).getBytes(StandardCharsets.ISO_8859_1));
        render();
        assertKeptSecret();
        assertThat(secret).hasContent(SECRET);
    }

    /** Folders of the cache that lead elsewhere: what is found there stays, and nothing is added. */
    @Test
    void foldersInItsCacheThatLeadOutAreLeftAlone() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("200.jpg"), SECRET);
        for (String deep : List.of("previews-" + PictureShelf.ENGINE, "measured")) {
            try (Stream<Path> inside = Files.list(root.resolve(".noctuary").resolve(deep))) {
                for (Path inner : inside.toList()) {
                    FolderTree.delete(inner);
                    Files.createSymbolicLink(inner, elsewhere);
                }
            }
        }
        render();
        assertKeptSecret();
        assertThat(files(elsewhere)).containsExactly(elsewhere.resolve("200.jpg"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "skies-" + SkyShelf.ENGINE + "-" + PictureShelf.ENGINE,
                "render.lock",
                "previews-" + PictureShelf.ENGINE
            })
    void aCacheThatLeadsOutIsRefused(String name) throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Path place = root.resolve(".noctuary").resolve(name);
        if (Files.exists(place)) {
            FolderTree.delete(place);
        }
        Files.createSymbolicLink(place, elsewhere);
        assertThatThrownBy(this::render).isInstanceOf(RefusedException.class).hasMessageContaining("is a link");
        assertThat(files(elsewhere)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"assets/site.css", "layout.ftlh", "entry.ftlh"})
    void aLinkAmongItsTemplatesIsRefusedInWords(String name) throws Exception {
        link(root.resolve("site-templates").resolve(name));
        assertThatThrownBy(this::render).isInstanceOf(IOException.class).hasMessageContaining("leads out");
        assertKeptSecret();
    }

    @Test
    void aLinkAmongItsNotesIsAProblem() throws Exception {
        link(root.resolve("entries/b.md"));
        link(root.resolve("entries/rigs/b.md"));
        assertThat(render().problems())
                .filteredOn(p -> p.what().contains("leads out"))
                .hasSize(2);
        assertKeptSecret();
    }

    /** A sparse file of a thousand million bytes costs its sender nothing. */
    @Test
    void keptFilesBeyondAllMeasureAreMadeAgain() throws Exception {
        for (Path file : files(root.resolve(".noctuary"))) {
            if (!file.toString().endsWith(".lock")) {
                try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
                    bytes.setLength(1_000_000_000);
                }
            }
        }
        assertThat(render().problems()).noneMatch(p -> p.isFault());
        for (Path file : files(output)) {
            assertThat(Files.size(file)).as(file.toString()).isLessThan(1 << 20);
        }
    }
}
