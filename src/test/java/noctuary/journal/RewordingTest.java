package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When only the words of a note are others, the rest of the site is left alone, and it is still what a whole render gives. */
class RewordingTest {
    private static final String PAGE = "targets/index.html";

    @TempDir
    private Path folder;

    private Path root;
    private SmallJournal journal;

    @BeforeEach
    void journal() throws Exception {
        root = folder.resolve("nights");
        journal = new SmallJournal(root);
        for (int e = 0; e < 4; e++) {
            words(e, "Steady air.");
            journal.frames("e" + e, 2, e, "2025-06-1" + e);
        }
        render();
    }

    private void words(int e, String... body) {
        note(e, "target: M 27", body);
    }

    private void note(int e, String key, String... body) {
        String[] front = {"---", "title: Night " + e, "frames: ['*.fits']", key, "---"};
        journal.file(
                "e" + e + "/entry.md",
                Stream.concat(Stream.of(front), Stream.of(body)).toArray(String[]::new));
    }

    private Rendering.Outcome render() throws Exception {
        return Rendering.render(root, root.resolve("output"), Progress.SILENT);
    }

    private Map<String, String> site() throws IOException {
        return SiteBytes.of(root.resolve("output"));
    }

    private Object folder() throws IOException {
        return Files.readAttributes(root.resolve("output"), BasicFileAttributes.class)
                .fileKey();
    }

    /** A whole render swaps the folder of the site; other words are put into the one that stands. */
    private void only(boolean words, String after) throws Exception {
        Object stood = folder();
        Rendering.Outcome outcome = render();
        assertThat(outcome.standing()).as(after).isFalse();
        assertThat(folder().equals(stood)).as(after).isEqualTo(words);
        Map<String, String> told = site();
        assertThat(render().standing()).as(after).isTrue();
        Rendering.Outcome anew = Rendering.anew(root, root.resolve("output"), Progress.SILENT);
        assertThat(outcome.problems()).as(after).isEqualTo(anew.problems());
        assertThat(outcome.files()).isEqualTo(anew.files());
        Map<String, String> whole = site();
        assertThat(told.keySet()).as(after).isEqualTo(whole.keySet());
        whole.forEach((path, text) ->
                assertThat(told.get(path)).as(after + ": " + path).isEqualTo(text));
    }

    @Test
    void wordsGoIntoTheSiteThatStands() throws Exception {
        words(1, "# Cloud", "Then **clear** & \"steady\", see [the next](../e2/entry.md).");
        only(true, "words");
        assertThat(root.resolve("output/entries/e1/index.html")).content().contains("<strong>clear</strong>");
        assertThat(root.resolve("output/find/words.js")).content().contains("Then clear & \\\"steady\\\"");
        words(0, "");
        only(true, "no words");
        words(3, "word ".repeat(2000));
        only(true, "many words");
        words(1, "One.");
        words(2, "Two.");
        only(false, "two notes");
    }

    @Test
    void wordsAfterWordsAndBeforeFacts() throws Exception {
        words(1, "One.");
        assertThat(render().standing()).isFalse();
        words(1, "Two.");
        only(true, "twice");
        words(1, "Four.");
        render();
        note(2, "lost: [{minutes: 5, cause: cloud}]", "Five.");
        only(false, "a fact after words");
        words(1, "Six.");
        only(true, "words after a fact");
    }

    @Test
    void factsAskForAWholeRender() throws Exception {
        note(1, "target: M 31", "Steady air.");
        only(false, "another target");
        note(1, "changes: [a new dew band]", "Steady air.");
        only(false, "a change");
        note(1, "nonsense: 3", "Steady air.");
        only(false, "a key that is none");
        words(1, "Steady air, ![stars](stars.png).");
        only(false, "a picture that is not there");
        words(1, "Steady air.", "", "See [nothing](../e9/entry.md).");
        only(false, "a link that leads nowhere");
    }

    @Test
    void whatLiesBesideTheNoteAsksForAWholeRender() throws Exception {
        words(1, "More frames.");
        journal.frame("e1", "f2.fits", FrameDraft.stars(3, 7).card("EXPTIME", "60.0"));
        only(false, "a frame");
        words(1, "Fewer frames.");
        Files.delete(root.resolve("entries/e1/f2.fits"));
        only(false, "a frame less");
        words(1, "Two notes.");
        journal.file("e7.md", "---", "date: 2025-07-01", "exposure: [{count: 3, seconds: 60}]", "---", "Words.");
        only(false, "a note more");
        journal.file("e7.md", "---", "date: 2025-07-01", "exposure: [{count: 3, seconds: 60}]", "---", "Others.");
        only(true, "words of a note without a folder");
        journal.file("rigs/heron.md", "---", "name: Heron", "---", "Words of a rig.");
        only(false, "words of a rig");
        journal.file("journal.yaml", "title: N", "site: terrace", "rig: heron");
        words(1, "And settings.");
        only(false, "settings");
    }

    @Test
    void notesThatOthersLeanOnAskForAWholeRender() throws Exception {
        note(1, "stack: ../e0/f0.fits", "Steady air.");
        render();
        words(0, "The folder of a stack.");
        only(false, "leaned on");
        words(2, "Another folder.");
        only(true, "not leaned on");
    }

    @Test
    void templatesAndWhatWasTouchedAskForAWholeRender() throws Exception {
        Files.createDirectories(root.resolve("site-templates"));
        Files.writeString(root.resolve("site-templates/entry.ftlh"), "<title>${page.title}</title>${page.note}");
        words(1, "A template.");
        only(false, "a template");
        words(1, "The template stays.");
        only(true, "words in a template of one's own");
        Files.writeString(root.resolve("output/" + PAGE), "touched");
        words(1, "Touched.");
        only(false, "a page that somebody touched");
    }

    @Test
    void aRecordOfAnotherSiteIsPassedOver() throws Exception {
        Path record = Places.standing(root, root.resolve("output"));
        Path kept = record.resolveSibling(record.getFileName() + "-words");
        byte[] before = Files.readAllBytes(kept);
        note(2, "lost: [{minutes: 5, cause: cloud}]", "Steady air.");
        render();
        Files.write(kept, before);
        words(2, "As before.");
        only(false, "a record from before the last render");
        Files.write(kept, new byte[] {1, 2, 3});
        words(2, "Damaged.");
        only(false, "a damaged record");
    }
}
