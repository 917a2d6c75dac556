package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import noctuary.fact.Problem;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures that a note shows; the files are those of {@code image}'s tests, 29 x 17 pixels as stored. */
class AttachmentsTest {
    @TempDir
    private Path folder;

    private Path page;

    @BeforeEach
    void write() throws Exception {
        SmallJournal journal = new SmallJournal(folder);
        page = folder.resolve("output/entries/m27");
        journal.file(
                "m27/entry.md",
                "---",
                "title: A",
                "exposure: [{count: 1, seconds: 60}]",
                "---",
                "![the mount](one.png) ![the moon](two.jpg) ![inks](three.jpg)",
                "",
                "The [mount](one.png) again.");
        put("turned-6.png", "one.png");
        put("turned-6.jpg", "two.jpg");
        put("cmyk.jpg", "three.jpg");
    }

    private void put(String resource, String name) throws IOException, URISyntaxException {
        Path from = Path.of(
                AttachmentsTest.class.getResource("/noctuary/image/" + resource).toURI());
        Files.write(folder.resolve("entries/m27").resolve(name), Files.readAllBytes(from));
    }

    private Rendering.Outcome render() throws Exception {
        return Rendering.render(folder, folder.resolve("output"), Progress.SILENT);
    }

    private String html() throws IOException {
        return Files.readString(page.resolve("index.html"));
    }

    @Test
    void picturesStandUprightAndInksAreColours() throws Exception {
        assertThat(render().problems()).noneMatch(Problem::isFault);
        for (String name : new String[] {"picture.png", "picture.jpg"}) {
            BufferedImage shown =
                    ImageIO.read(page.resolve("files").resolve(name).toFile());
            assertThat(shown.getWidth()).as(name).isEqualTo(17);
            assertThat(shown.getHeight()).as(name).isEqualTo(29);
        }
        assertThat(ImageIO.read(page.resolve("files/picture-2.jpg").toFile()).getWidth())
                .isEqualTo(24);
    }

    @Test
    void aTornPictureSaysWhyInItsPlace() throws Exception {
        render();
        Path torn = folder.resolve("entries/m27/one.png");
        byte[] whole = Files.readAllBytes(torn);
        Files.write(torn, Arrays.copyOf(whole, whole.length / 2));
        assertThat(render().problems())
                .filteredOn(Problem::isFault)
                .singleElement()
                .satisfies(p -> assertThat(p.what()).contains("ends too early, so it is not shown"));
        assertThat(html())
                .contains("The picture “the mount” cannot be shown: the picture is damaged: it ends too early.")
                .doesNotContain("src=\"files/picture.png\"")
                .doesNotContain("href=\"files/picture.png\"")
                .contains("src=\"files/picture.jpg\"");
        assertThat(page.resolve("files/picture.png")).doesNotExist();
        Files.write(torn, whole);
        render();
        assertThat(html()).contains("src=\"files/picture.png\"").doesNotContain("cannot be shown");
    }
}
