package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The site before the one that stands becomes the next one; with whatever happened to it meanwhile, no site shows it. */
class SpareTest {
    private static final String PAGE = "entries/e0/index.html";
    private static final String PICTURE = "entries/e0/stack-200.jpg";

    @TempDir
    private Path folder;

    private Path root;
    private Path output;
    private SmallJournal journal;

    @BeforeEach
    void twoSites() throws Exception {
        root = folder.resolve("nights");
        output = root.resolve("output");
        journal = new SmallJournal(root);
        for (int e = 0; e < 2; e++) {
            note(e, "Night " + e);
            journal.frame(
                    "e" + e,
                    "stack.fit",
                    FrameDraft.stars(3, e).card("NCOMBINE", "3").card("EXPTIME", "60.0"));
        }
        render();
        note(1, "Night 1, told anew");
        render();
    }

    private void note(int e, String title) {
        journal.entry("e" + e, "title: " + title, "stack: stack.fit");
    }

    private Map<String, String> render() throws Exception {
        Rendering.render(root, output, Progress.SILENT);
        return SiteBytes.of(output);
    }

    private Path spare() {
        return Spare.of(root, output, ShownFiles.of(root, output)).folder();
    }

    private static Object place(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    /** What the next site must look like, from a journal that has only its notes and files. */
    private Map<String, String> next() throws Exception {
        note(1, "Night 1, told once more");
        Map<String, String> site = render();
        FolderTree.delete(root.resolve(".noctuary"));
        FolderTree.delete(output);
        assertThat(render()).isEqualTo(site);
        return site;
    }

    @Test
    void itsFoldersAndFilesAreTakenAgain() throws Exception {
        Object old = place(spare().resolve("entries/e0"));
        Object standing = place(output.resolve("entries/e0"));
        note(1, "Night 1, told once more");
        render();
        assertThat(place(output.resolve("entries/e0"))).isEqualTo(old);
        assertThat(place(spare().resolve("entries/e0"))).isEqualTo(standing);
        assertThat(output.resolve(PICTURE)).exists();
        next();
    }

    @Test
    void anewMeansEveryPageButNotEveryPicture() throws Exception {
        Object picture = place(spare().resolve(PICTURE));
        Map<String, String> before = SiteBytes.of(output);
        Rendering.anew(root, output, Progress.SILENT);
        assertThat(SiteBytes.of(output)).isEqualTo(before);
        assertThat(place(output.resolve(PICTURE))).isEqualTo(picture);
    }

    @Test
    void oneThatSomebodyTouchedIsNotTaken() throws Exception {
        Files.writeString(spare().resolve("entries/e0/mine.txt"), "mine");
        Files.writeString(spare().resolve(PAGE), "mine");
        assertThat(next()).doesNotContainKey("entries/e0/mine.txt").doesNotContainValue("mine");
    }

    @Test
    void oneWithoutItsRecordIsNotTaken() throws Exception {
        Files.delete(ShownFiles.of(root, output).ofSpare().place());
        Files.writeString(spare().resolve("entries/e0/mine.txt"), "mine");
        assertThat(next()).doesNotContainKey("entries/e0/mine.txt");
    }

    /** A journal from elsewhere could bring one whose folders lead anywhere, with a record that fits. */
    @Test
    void nothingIsWrittenThroughLinksInIt() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        FolderTree.delete(spare().resolve("entries/e1"));
        Files.createSymbolicLink(spare().resolve("entries/e1"), elsewhere);
        assertThat(Standing.site(spare())).isEmpty();
        next();
        assertThat(elsewhere).isEmptyDirectory();
    }

    @Test
    void oneThatIsALinkItselfIsNotFollowed() throws Exception {
        Path elsewhere = folder.resolve("elsewhere");
        Files.move(spare(), elsewhere);
        Files.createSymbolicLink(spare(), elsewhere);
        Map<String, String> before = SiteBytes.of(elsewhere);
        next();
        assertThat(SiteBytes.of(elsewhere)).isEqualTo(before);
    }

    /** Hidden files beside the pages are the keeper's; they follow the site that stands. */
    @Test
    void hiddenFilesFollowTheStandingSite() throws Exception {
        Path hidden = output.resolve(".headers");
        Files.writeString(hidden, "one");
        note(1, "Night 1, a");
        render();
        note(1, "Night 1, b");
        render();
        assertThat(hidden).hasContent("one");
        Files.writeString(hidden, "two");
        note(1, "Night 1, c");
        render();
        assertThat(hidden).hasContent("two");
        Files.delete(hidden);
        note(1, "Night 1, d");
        render();
        assertThat(hidden).doesNotExist();
    }
}
