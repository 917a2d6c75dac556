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
                Arguments.of("references", "[a]: b\n".repeat(many / 6) + "[a]".repeat(5_000)),
                Arguments.of("references to none", "[a][b]\n\n".repeat(many / 6)),
                Arguments.of("entities", "&#x1F4A9;&amp;&".repeat(many / 6)),
                Arguments.of("backslashes", "\\".repeat(4 * many)),
                Arguments.of("one word", "a".repeat(4 * many)),
                Arguments.of("blanks", "a" + " ".repeat(4 * many) + "b"),
                Arguments.of("blanks in a picture", "![a" + " ".repeat(4 * many) + "b](x.png)"),
                Arguments.of("blanks in a link", "[a](<x" + " ".repeat(4 * many) + ">)"),
                Arguments.of("tildes", "~~a~ ".repeat(many / 4)),
                Arguments.of("stars", "*".repeat(many) + "a" + "*".repeat(many)),
                Arguments.of("stars and underscores", "*_".repeat(2_000) + "a" + "_*".repeat(2_000)),
                Arguments.of("open comments", "<!--".repeat(many / 4)),
                Arguments.of("open instructions", "<?".repeat(many)),
                Arguments.of("open data", "<![CDATA[".repeat(many / 8)),
                Arguments.of("lists that step in", stepping("- a\n")),
                Arguments.of("numbers that step in", stepping("1. a\n")),
                Arguments.of(
                        "quotes that step in",
                        Stream.iterate(">", q -> q + ">").limit(300).reduce("", (a, q) -> a + q + "a\n")),
                Arguments.of("fences", "```\n~~~\n".repeat(many / 8)),
                Arguments.of("underlined headings", "a\n=\nb\n-\n".repeat(many / 8)),
                Arguments.of("long table", "|a|b|\n|-|-|\n" + "|1|2|\n".repeat(many / 4)),
                Arguments.of(
                        "table of pipes",
                        "|".repeat(4_000) + "\n" + "|-".repeat(4_000) + "\n" + ("|".repeat(60) + "\n").repeat(500)),
                Arguments.of("footnotes in footnotes", "[^a]: [^a]\n\n".repeat(400)),
                Arguments.of("tasks", "- [ ] a\n".repeat(many / 8)),
                Arguments.of("hard breaks", "a  \n".repeat(many / 4)),
                Arguments.of("nothing", "\n".repeat(many)),
                Arguments.of("zero bytes", "\0".repeat(many)));
    }

    private static String stepping(String item) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            text.append("  ".repeat(i)).append(item);
        }
        return text.toString();
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
                Arguments.of("a long value", "title: " + "a".repeat(60_000)),
                Arguments.of("blanks in a number", "night: 1" + " ".repeat(60_000) + "2"),
                Arguments.of("thousands of thousands", "guiding: {rms: 1" + ",000".repeat(15_000) + "}"),
                Arguments.of("an exponent", "guiding: {rms: 1e999999999 arcsec}"),
                Arguments.of("a large whole number", "exposure: [{count: " + "9".repeat(3_000) + ", seconds: 1}]"),
                Arguments.of("anchors", "&a ".repeat(15_000) + "title: b"),
                Arguments.of("anchors of anchors", "a: &a b\n".repeat(7_000)),
                Arguments.of("merges", "x: &x {a: b}\n" + "y: {<<: *x}\n".repeat(4_000)),
                Arguments.of("tags", "title: " + "!!map ".repeat(10_000)),
                Arguments.of("a key of questions", "? ".repeat(30_000)),
                Arguments.of("documents", "--- a\n".repeat(10_000)),
                Arguments.of("directives", "%YAML 1.1\n".repeat(6_000) + "--- a"),
                Arguments.of("comments", "title: a\n" + "#\n".repeat(30_000) + "titel: b"),
                Arguments.of("folded lines", "title: >\n" + "  a\n\n".repeat(10_000)),
                Arguments.of("quotes", "title: \"" + "\\n".repeat(30_000) + "\""),
                Arguments.of("empty alternatives", "frames: ['{" + ",".repeat(3_900) + "}']"),
                Arguments.of("alternatives in alternatives", "frames: ['" + "{a,".repeat(1_300) + "']"),
                Arguments.of("sets in patterns", "frames: ['" + "*[!a-z]".repeat(500) + "']"),
                Arguments.of("folders of any depth", "frames: ['" + "**/a*/".repeat(15) + "*.fits']"),
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
