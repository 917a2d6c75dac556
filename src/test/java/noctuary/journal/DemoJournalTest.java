package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import noctuary.fact.Problem;
import noctuary.site.HtmlValidity;
import noctuary.site.SiteHarm;
import noctuary.site.SiteLinks;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo journal as a stranger first sees it. */
class DemoJournalTest {
    private static final Path ROOT = Path.of("").toAbsolutePath();

    @TempDir
    private static Path folder;

    private static Path site;
    private static Rendering.Outcome outcome;

    @BeforeAll
    static void render() throws Exception {
        site = folder.resolve("site");
        outcome = Rendering.render(ROOT, site, Progress.SILENT);
    }

    @Test
    void everyEntryIsRenderedWithoutAFault() throws Exception {
        assertThat(outcome.problems()).noneMatch(Problem::isFault);
        try (Stream<Path> entries = Files.list(ROOT.resolve("entries"))) {
            List<String> slugs = entries.map(p -> p.getFileName().toString().replace(".md", ""))
                    .filter(name -> name.startsWith("20"))
                    .toList();
            assertThat(slugs)
                    .hasSizeGreaterThanOrEqualTo(16)
                    .allSatisfy(slug -> assertThat(
                                    site.resolve("entries").resolve(slug).resolve("index.html"))
                            .exists());
        }
    }

    /**
     * The longer focal length of one night is planted, and seen by sky, header and rig; the small refractor's stars are
     * two pixels wide, as its note says.
     */
    @Test
    void theOnlyNoticesAreThoseOfTheLongerFocalLengthAndTheCoarsePixels() {
        assertThat(outcome.problems())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.where())
                        .matches("entries/2025-05-24-m51/entry.md, (image scale|focal length)"
                                + "|entries/rigs/heron.md, desk-focal-length-2025-05-24-m51"
                                + "|entries/rigs/wren.md, desk-sampling"));
        assertThat(outcome.problems())
                .extracting(Problem::place)
                .contains("image scale", "focal length", "desk-focal-length-2025-05-24-m51", "desk-sampling");
    }

    @Test
    void everyLinkAndPictureResolves() throws Exception {
        assertThat(SiteLinks.broken(site)).isEmpty();
    }

    @Test
    void everyPageIsValidHtml() throws Exception {
        assertThat(HtmlValidity.problems(site)).isEmpty();
    }

    @Test
    void nothingOnAnyPageCanDoHarm() throws Exception {
        assertThat(SiteHarm.found(site)).isEmpty();
    }
}
