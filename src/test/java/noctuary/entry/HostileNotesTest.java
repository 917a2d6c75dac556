package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import noctuary.fact.Problem;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Text that takes a parser's memory, stack or time: the note has a problem, the rest of the journal is read. */
class HostileNotesTest {
    private static final String KEYS = "---\nexposure: {count: 1, seconds: 1}\n---\n";
    /** Each takes well under a second; the limit leaves room for a busy machine. */
    private static final Duration LIMIT = Duration.ofSeconds(20);

    @TempDir
    Path root;

    private Journal read(String note) throws IOException {
        Files.createDirectories(root.resolve("entries/rigs"));
        Files.writeString(root.resolve("entries/journal.yaml"), "rig: heron\n");
        Files.writeString(root.resolve("entries/rigs/heron.md"), "---\nname: Heron\n---\n");
        Files.writeString(root.resolve("entries/good.md"), KEYS + "Good.\n");
        Files.writeString(root.resolve("entries/nasty.md"), note);
        return Assertions.assertTimeoutPreemptively(LIMIT, () -> Journal.read(root));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void bodiesAreReadInTime(String name, String body) throws IOException {
        Journal journal = read(KEYS + body);
        assertThat(journal.entries()).extracting(Entry::slug).containsExactly("good", "nasty");
        assertThat(journal.entries().get(0).html()).isEqualTo("<p>Good.</p>\n");
        assertThat(journal.problems()).allMatch(problem -> problem.file().equals("entries/nasty.md"));
    }

    static Stream<Arguments> bodiesAreReadInTime() {
        int many = 60_000;
        return Stream.of(
                Arguments.of("open brackets", "[".repeat(many)),
                Arguments.of("open links", "[a](".repeat(many)),
                Arguments.of("empty links", "[]()".repeat(many)),
                Arguments.of("open pictures", "![".repeat(many)),
                Arguments.of("emphasis", "*a **a _a ".repeat(many / 3)),
                Arguments.of("tags", "<a <!-- <? ".repeat(many / 3)),
                Arguments.of("ticks", "e`e``e```".repeat(many / 3)),
                Arguments.of("1,000 quotes", ">".repeat(1000) + " a"),
                Arguments.of("1,000 lists", "- ".repeat(1000) + "a"),
                Arguments.of("wide table", "|a".repeat(many) + "\n" + "|-".repeat(many) + "\n"),
                Arguments.of("headings of one name", "# a\n".repeat(many / 4)),
                Arguments.of("footnotes", "[^a]: b\n\nc[^a]\n\n".repeat(many / 6)),
                Arguments.of("bad links", "[a](javascript:x)\n\n".repeat(12_000)),
                Arguments.of("nothing", "\n".repeat(many)),
                Arguments.of("zero bytes", "\0".repeat(many)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void keysAreReadInTime(String name, String keys) throws IOException {
        Journal journal = read("---\n" + keys + "\n---\nBody.\n");
        assertThat(journal.entries()).hasSize(2);
        assertThat(journal.problems()).isNotEmpty().hasSizeLessThanOrEqualTo(100);
        assertThat(journal.problems()).allMatch(problem -> problem.where().length() < 120);
        assertThat(journal.entries().get(1).html()).isEqualTo("<p>Body.</p>\n");
    }

    static Stream<Arguments> keysAreReadInTime() {
        return Stream.of(
                Arguments.of("alias bomb", "a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\ntitle: *c"),
                Arguments.of("open brackets", "title: " + "[".repeat(60_000)),
                Arguments.of("open braces", "title: " + "{a: ".repeat(15_000)),
                Arguments.of("lists in lists", "title:\n  " + "- ".repeat(30_000)),
                Arguments.of(
                        "unknown keys",
                        Stream.iterate(0, n -> n + 1)
                                .limit(5000)
                                .map(n -> "key" + n + ": 1\n")
                                .reduce("", String::concat)),
                Arguments.of("one key again and again", "a: 1\n".repeat(12_000)),
                Arguments.of("a long key", "k".repeat(60_000) + ": 1"),
                Arguments.of("one mistake again and again", "a: b: c\n".repeat(8_000)),
                Arguments.of("more than 64 kB", "a: 1\n".repeat(14_000)),
                Arguments.of("a long number", "guiding: {rms: " + "9".repeat(60_000) + " arcsec}"),
                Arguments.of("stars in patterns", "frames: ['" + "*a".repeat(5_000) + "b']"),
                Arguments.of("alternatives in patterns", "frames: ['" + "{a,b}".repeat(40) + "']"),
                Arguments.of("folders in patterns", "frames: ['" + "**/".repeat(500) + "x']"));
    }

    /** An alias never grows into what it stands for: the title is refused, and nothing is copied. */
    @Test
    void anAliasIsRefused() throws IOException {
        Journal journal = read("---\ntitle: *bomb\nexposure: {count: 1, seconds: 1}\n---\n");
        assertThat(journal.problems())
                .extracting(Problem::where, Problem::hint)
                .containsExactly(
                        tuple("entries/nasty.md, line 2, key title", "put quotes around a value that begins with *"));
    }

    @Test
    void aNoteOfTenMegabytesKeepsItsKeys() throws IOException {
        Journal journal = read(KEYS + "word word\n".repeat(1_048_576));
        assertThat(journal.entries().get(1).exposure()).hasSize(1);
        assertThat(journal.entries().get(1).html()).isEmpty();
        assertThat(NoteSpec.problems(journal))
                .isEqualTo(List.of("entries/nasty.md: this file is larger than 1 MB; only its keys were read; "
                        + "keep frames and pictures in files of their own"));
    }

    @Test
    void aBodyNestedTooDeepIsShownAsItStands() throws IOException {
        Journal journal = read(KEYS + ">".repeat(1000) + "<b>\n");
        assertThat(journal.entries().get(1).html()).startsWith("<pre>&gt;&gt;").contains("&lt;b&gt;");
        assertThat(journal.problems()).hasSize(1);
    }
}
