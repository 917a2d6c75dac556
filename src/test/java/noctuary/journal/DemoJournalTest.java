package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import noctuary.fact.Problem;
import noctuary.site.HtmlValidity;
import noctuary.site.SiteHarm;
import noctuary.site.SiteLinks;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
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

    /**
     * Planted in plan.yaml: guiding of 1.6 arcsec once, a focus left alone twice, a corrector 1.19 mm too close until the
     * ring of September 2025, streaks in one stack, single exposures through haze and a tree;
     * twice the target stood below 45 degrees.
     */
    @Test
    void whatLimitsEachImageIsWhatWasPlanted() throws Exception {
        Map<String, List<String>> named = new TreeMap<>();
        JsonNode journal = new ObjectMapper()
                .readTree(site.resolve("data").resolve("journal.json").toFile());
        for (JsonNode entry : journal.get("entries")) {
            List<String> limits = new ArrayList<>();
            for (JsonNode finding : entry.get("findings")) {
                String id = finding.get("id").asText();
                if (id.startsWith("limit-") && !id.equals("limit-none")) {
                    limits.add(id);
                }
            }
            if (!limits.isEmpty()) {
                named.put(entry.get("slug").asText(), limits);
            }
        }
        assertThat(named.get("2024-09-28-ngc7000")).containsExactly("limit-streaks");
        assertThat(named.get("2025-03-26-m51")).containsExactly("limit-guiding");
        assertThat(named.get("2025-04-26-m13")).containsExactly("limit-focus", "limit-altitude");
        assertThat(named.get("2025-06-14-ngc6888")).containsExactly("limit-spacing", "limit-altitude");
        assertThat(named.get("2025-08-22-m27")).containsExactly("limit-spacing", "limit-focus");
        assertThat(named)
                .as("besides these, only the three other nights with the short train")
                .containsOnlyKeys(
                        "2024-09-28-ngc7000",
                        "2025-03-26-m51",
                        "2025-04-26-m13",
                        "2025-05-24-m51",
                        "2025-06-14-ngc6888",
                        "2025-06-27-m13",
                        "2025-07-25-m57",
                        "2025-08-22-m27");
    }

    /** 1768 EUR less 1025 EUR, as the two rigs' notes add up. */
    @Test
    void aRigsPriceStandsBesideWhatItSurelyGave() throws Exception {
        assertThat(Files.readString(site.resolve("rigs/heron/index.html")))
                .contains("743\u00a0EUR more")
                .contains("18\u00a0EUR more");
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

    /** The page, its style sheets and scripts, and every picture that loads before it is scrolled to, the widest taken. */
    @Test
    void theFirstViewOfAnEntryIsLight() throws Exception {
        try (Stream<Path> pages = Files.list(site.resolve("entries"))) {
            for (Path page : pages.map(p -> p.resolve("index.html")).toList()) {
                assertThat(FirstView.bytes(page)).as(page.toString()).isBetween(40_000L, 600_000L);
            }
        }
    }

    @Test
    void attemptsOnOneTargetLieOnOneGrid() throws Exception {
        Document page = Jsoup.parse(Files.readString(site.resolve("targets/m-51/index.html")));
        assertThat(page.select(".sky-list li")).hasSize(3);
        assertThat(page.select(".sky-two img").eachAttr("width"))
                .hasSize(2)
                .containsOnly(page.select(".sky-two img").attr("width"));
        assertThat(page.select(".cuts tbody tr")).hasSize(3);
        assertThat(page.select(".cuts td img")).hasSize(15);
    }
}
