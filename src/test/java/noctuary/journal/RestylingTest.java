package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import noctuary.site.TemplateFault;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When only templates are others, pages are made from what was kept, and the site is still what a whole render gives. */
class RestylingTest {
    @TempDir
    private Path folder;

    private Path root;
    private SmallJournal journal;

    @BeforeEach
    void journal() throws Exception {
        root = folder.resolve("nights");
        journal = new SmallJournal(root);
        for (int e = 0; e < 4; e++) {
            note(e, "changes: [a new dew band]", "Steady air " + e + ", see [the next](../e2/entry.md).");
            journal.frames("e" + e, 2, e, "2025-06-1" + e);
        }
        journal.file("e2/words.txt", "attached");
        note(2, "target: M 27", "See [a text](words.txt) and ![nothing](nothing.png).");
        render();
    }

    private void note(int e, String key, String body) {
        journal.file("e" + e + "/entry.md", "---", "title: Night " + e, "frames: ['*.fits']", key, "---", body);
    }

    private Rendering.Outcome render() throws Exception {
        return Rendering.render(root, root.resolve("output"), Progress.SILENT);
    }

    /** When it was kept what a page shows: with other templates a whole render does so again. */
    private FileTime kept() throws IOException {
        return Files.getLastModifiedTime(root.resolve(".noctuary/worked-out/pages/data~index.html"));
    }

    private void template(String name, String text) throws IOException {
        Path file = root.resolve("site-templates").resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private void layout(String end) throws IOException {
        String ours = Files.readString(Path.of("site-templates", "layout.ftlh"));
        template("layout.ftlh", ours.replace("</body>", "<!-- " + end + " --></body>"));
    }

    /** The journal alone, with nothing that was kept, under the same name. */
    private Path afresh() throws IOException {
        Path copy = Files.createTempDirectory(folder, "afresh").resolve(root.getFileName());
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path within = root.relativize(file);
                if (!within.startsWith("output") && !within.startsWith(".noctuary")) {
                    Files.createDirectories(copy.resolve(within).getParent());
                    Files.copy(file, copy.resolve(within), StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
        return copy;
    }

    private void only(boolean templates, String after) throws Exception {
        FileTime before = kept();
        Rendering.Outcome outcome = render();
        assertThat(outcome.standing()).as(after).isFalse();
        assertThat(kept().equals(before)).as(after).isEqualTo(templates);
        Map<String, String> told = SiteBytes.of(root.resolve("output"));
        assertThat(render().standing()).as(after).isTrue();
        Path afresh = afresh();
        Rendering.Outcome anew = Rendering.render(afresh, afresh.resolve("output"), Progress.SILENT);
        assertThat(outcome.problems()).as(after).isEqualTo(anew.problems());
        assertThat(outcome.files()).isEqualTo(anew.files());
        Map<String, String> whole = SiteBytes.of(afresh.resolve("output"));
        assertThat(told.keySet()).as(after).isEqualTo(whole.keySet());
        whole.forEach((path, text) ->
                assertThat(told.get(path)).as(after + ": " + path).isEqualTo(text));
    }

    @Test
    void pagesAreMadeFromWhatWasKept() throws Exception {
        layout("first");
        only(true, "another layout");
        layout("second");
        only(true, "once more");
        template("assets/site.css", "body { color: #222 }");
        only(true, "another style sheet");
        assertThat(root.resolve("output/assets/site.css")).content().contains("#222");
        Files.delete(root.resolve("site-templates/layout.ftlh"));
        only(true, "a template less");
    }

    @Test
    void severalInARowAndWordsBetweenThem() throws Exception {
        layout("first");
        render();
        layout("second");
        only(true, "the second");
        layout("third");
        render();
        note(1, "changes: [a new dew band]", "Other words.");
        render();
        assertThat(root.resolve("output/entries/e1/index.html")).content().contains("Other words.", "third");
        layout("fourth");
        only(false, "after words");
    }

    @Test
    void whateverElseChangedAsksForAWholeRender() throws Exception {
        layout("and a note");
        note(1, "lost: [{minutes: 5, cause: cloud}]", "Steady air.");
        only(false, "a fact");
        layout("and a frame");
        journal.frame("e1", "f2.fits", FrameDraft.stars(3, 7).card("EXPTIME", "60.0"));
        only(false, "a frame");
        layout("and settings");
        journal.file("journal.yaml", "title: N");
        only(false, "settings");
        layout("and a touched page");
        Files.writeString(root.resolve("output/targets/index.html"), "touched");
        only(false, "a page that somebody touched");
    }

    /** A page of a change shows the newest picture to the web, whichever entry that is of. */
    @Test
    void aPublishedJournalShowsItsNewestPicture() throws Exception {
        journal.file(
                "journal.yaml", "title: N", "site: terrace", "rig: heron", "published at: https://nights.example/");
        journal.file(
                "rigs/wren.md",
                "---",
                "name: Wren",
                "optics: {aperture: 80 mm, focal length: 480 mm}",
                "camera: {pixel: 3.3 µm, width: 200, height: 150}",
                "---");
        render();
        assertThat(root.resolve("output/feed.xml")).exists();
        try (Stream<Path> changes = Files.list(root.resolve("output/changes"))) {
            assertThat(changes.filter(Files::isDirectory).toList())
                    .isNotEmpty()
                    .allSatisfy(change ->
                            assertThat(change.resolve("index.html")).content().contains("example/entries/e3/"));
        }
        note(5, "rig: wren", "Newer, on another rig.");
        journal.frame(
                "e5",
                "f0.fits",
                FrameDraft.stars(3, 9).card("EXPTIME", "60.0").card("DATE-OBS", "'2025-07-15T22:30:00'"));
        only(false, "a newer entry");
        layout("after it");
        only(true, "after a newer entry");
    }

    @Test
    void whatWasNotKeptAsksForAWholeRender() throws Exception {
        try (var kept = Files.list(root.resolve(".noctuary/worked-out/pages"))) {
            Files.delete(kept.filter(p -> p.toString().contains("targets"))
                    .findFirst()
                    .orElseThrow());
        }
        layout("without a model");
        only(false, "a page's model less");
        Files.write(root.resolve(".noctuary/worked-out/entry-pages/e1"), new byte[] {1, 2, 3});
        layout("damaged");
        only(false, "a damaged page");
        layout("as it should be");
        only(true, "all there again");
    }

    @Test
    void aWrongTemplateLeavesTheSiteAsItStands() throws Exception {
        Map<String, String> before = SiteBytes.of(root.resolve("output"));
        template("entry.ftlh", "${page.nothing}");
        assertThatThrownBy(this::render).isInstanceOf(TemplateFault.class);
        assertThat(SiteBytes.of(root.resolve("output"))).isEqualTo(before);
        template("entry.ftlh", "<title>${page.title}</title>${page.note}");
        only(true, "mended");
    }
}
