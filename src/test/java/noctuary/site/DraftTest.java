package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftTest {
    private static final String PAGE = "entries/a/index.html";

    @TempDir
    private Path folder;

    private Path first;
    private Path second;

    @BeforeEach
    void folders() throws IOException {
        first = Files.createDirectory(folder.resolve("first"));
        second = Files.createDirectory(folder.resolve("second"));
    }

    private static ByteBuffer bytes(String text) {
        return ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    }

    private Map<String, Piece> firstSite() throws IOException {
        Draft draft = Draft.in(first);
        draft.write(PAGE, "k1", bytes("one"));
        draft.write("rigs/b/index.html", "k2", bytes("two"));
        Files.writeString(first.resolve("entries/a/s-1.jpg"), "1");
        Files.writeString(first.resolve("entries/a/s-2.jpg"), "2");
        draft.put("entries/a/s", "p1", List.of("entries/a/s-1.jpg", "entries/a/s-2.jpg"));
        return draft.pieces();
    }

    private static Object place(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    @Test
    void whatShowsTheSameStaysAndTheRestIsClearedAway() throws Exception {
        Draft again = Draft.of(first, firstSite(), Former.none());
        Object before = place(first.resolve(PAGE));
        assertThat(again.take(PAGE, "k1")).isTrue();
        assertThat(again.has("entries/a/s", "p1", List.of("entries/a/s-1.jpg"))).isFalse();
        assertThat(again.has("entries/a/s", "p2", List.of("entries/a/s-1.jpg", "entries/a/s-2.jpg")))
                .isFalse();
        again.put("entries/a/s", "p2", List.of("entries/a/s-1.jpg"));
        again.clear();
        assertThat(place(first.resolve(PAGE))).isEqualTo(before);
        assertThat(first.resolve("entries/a/s-1.jpg")).exists();
        assertThat(first.resolve("entries/a/s-2.jpg")).doesNotExist();
        assertThat(first.resolve("rigs")).doesNotExist();
        assertThat(again.pieces()).containsOnlyKeys(PAGE, "entries/a/s");
    }

    @Test
    void aFileOfTheStandingSiteIsNeverWrittenTo() throws Exception {
        Map<String, Piece> standing = firstSite();
        Draft taken = Draft.of(second, Map.of(), Former.at(first, standing));
        assertThat(taken.take(PAGE, "k1")).isTrue();
        assertThat(place(second.resolve(PAGE))).isEqualTo(place(first.resolve(PAGE)));
        Draft next = Draft.of(second, taken.pieces(), Former.none());
        assertThat(next.take(PAGE, "k9")).isFalse();
        next.write(PAGE, "k9", bytes("six"));
        next.copy("files/x.txt", "k3", first.resolve("rigs/b/index.html"));
        assertThat(second.resolve(PAGE)).hasContent("six");
        assertThat(second.resolve("files/x.txt")).hasContent("two");
        assertThat(first.resolve(PAGE)).hasContent("one");
    }

    @Test
    void theStandingSiteReplacesWhatIsOlder() throws Exception {
        Draft older = Draft.in(second);
        older.write(PAGE, "k0", bytes("nil"));
        Draft next = Draft.of(second, older.pieces(), Former.at(first, firstSite()));
        assertThat(next.take(PAGE, "k1")).isTrue();
        assertThat(second.resolve(PAGE)).hasContent("one");
    }

    @Test
    void theSameBytesAreLeftWhereTheyAre() throws Exception {
        Draft again = Draft.of(first, firstSite(), Former.none());
        Object before = place(first.resolve(PAGE));
        again.write(PAGE, "k7", bytes("one"));
        assertThat(place(first.resolve(PAGE))).isEqualTo(before);
        again.write(PAGE, "k8", bytes("eno"));
        assertThat(first.resolve(PAGE)).hasContent("eno");
    }

    @Test
    void whatCannotBeToldIsNeverTheSame() throws Exception {
        Draft draft = Draft.in(first);
        draft.write(PAGE, "", bytes("one"));
        assertThat(Draft.of(first, draft.pieces(), Former.at(first, draft.pieces()))
                        .take(PAGE, ""))
                .isFalse();
    }

    @Test
    void nothingIsWrittenOutsideOfIt() {
        assertThatThrownBy(() -> Draft.in(first).write("../out.html", "k", bytes("x")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("leads out");
        assertThat(folder.resolve("out.html")).doesNotExist();
    }
}
