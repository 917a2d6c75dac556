package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteWriterTest {
    @TempDir
    static Path site;

    @BeforeAll
    static void write() throws IOException {
        FixtureSite.write(site, true, false);
    }

    @Test
    void everyLinkAnchorAndPictureLeadsSomewhere() throws IOException {
        assertThat(SiteLinks.broken(site)).isEmpty();
    }

    @Test
    void everyPageIsValidHtml() throws IOException {
        assertThat(HtmlValidity.problems(site)).isEmpty();
    }

    @Test
    void nothingFromHeadersOrNotesRuns() throws IOException {
        assertThat(SiteHarm.found(site)).isEmpty();
        Document odd = page("entries/odd/index.html");
        assertThat(odd.select("h1").text()).isEqualTo("Odd \"><img src=x onerror=alert(2)>");
        assertThat(odd.select("img[src=x]")).isEmpty();
        assertThat(odd.text()).contains(Fixture.HOSTILE);
    }

    @Test
    void headingsDescendWithoutGapsFromOneFirstLevel() throws IOException {
        for (Path file : HtmlValidity.pages(site)) {
            int before = 0;
            Document document = Jsoup.parse(Files.readString(file));
            assertThat(document.select("h1")).as(file.toString()).hasSize(1);
            for (Element heading : document.select("h1, h2, h3, h4, h5, h6")) {
                int level = heading.tagName().charAt(1) - '0';
                assertThat(level).as(file + ": " + heading.text()).isLessThanOrEqualTo(before + 1);
                before = level;
            }
        }
    }

    @Test
    void everyPageSaysWhatItIsAndHasItsLandmarks() throws IOException {
        for (Path file : HtmlValidity.pages(site)) {
            Document document = Jsoup.parse(Files.readString(file));
            assertThat(document.title()).as(file.toString()).isNotBlank();
            assertThat(document.select("meta[name=description]").attr("content"))
                    .isNotBlank();
            assertThat(document.select("html[lang=en], main#main, header nav, footer, a.skip[href=#main]"))
                    .hasSize(5);
        }
    }

    @Test
    void theSameJournalGivesTheSameBytes(@TempDir Path again) throws IOException {
        FixtureSite.write(again, true, false);
        assertThat(texts(again)).isEqualTo(texts(site));
    }

    @Test
    void nothingPrivateLeavesUnlessPublished(@TempDir Path secret) throws IOException {
        FixtureSite.write(secret, false, false);
        texts(secret)
                .forEach((name, text) -> assertThat(text)
                        .as(name)
                        .doesNotContain(Fixture.PLANTED)
                        .doesNotContain("l_001.fits", "long-tube.fits"));
    }

    @Test
    void pathsNeverLeaveEvenWhenFileNamesDo() throws IOException {
        texts(site)
                .forEach((name, text) ->
                        assertThat(text).as(name).doesNotContain("planteduser").doesNotContain("/home/"));
        assertThat(page("entries/long-tube/index.html").text()).contains("lights/l_007.fits");
        texts(site).forEach((name, text) -> {
            if (!name.equals("data/journal.json")) {
                assertThat(text).as(name).doesNotContain("44.31234").doesNotContain("9.21234");
            }
        });
    }

    @Test
    void aFactOpensToItsOriginAndADisputeShowsBoth() throws IOException {
        Element scale =
                page("entries/long-tube/index.html").select("details.disputed").first();
        assertThat(scale.select("summary").text())
                .contains("Image scale", "1.303", "but 1.342")
                .contains("header");
        assertThat(scale.select(".reading")).hasSize(2);
        assertThat(scale.text()).contains("CD1_1", "206.265 × pixel pitch", "750 mm", "entries/rigs/heron.md, line 4");
    }

    @Test
    void aMissingFactSaysWhy() throws IOException {
        assertThat(page("entries/long-tube/index.html").select("p.missing").text())
                .contains("not known: no guiding line in the note");
    }

    @Test
    void controlsThatNeedTheScriptAreHiddenWithoutIt() throws IOException {
        Document journal = page("index.html");
        assertThat(journal.select("select, button, input[type=text]"))
                .isNotEmpty()
                .allSatisfy(control -> assertThat(control.closest("[hidden]"))
                        .as(control.outerHtml())
                        .isNotNull());
        assertThat(journal.select("table#list tbody tr")).hasSize(5);
    }

    @Test
    void exposureOfATwoNightEntryFallsIntoItsNights() throws IOException {
        Document nights = page("nights/index.html");
        assertThat(nights.select("#night-2025-08-20 .used").text()).isEqualTo("1 h 27 min");
        assertThat(nights.select("#night-2025-08-21 .used").text()).isEqualTo("1 h 15 min");
    }

    @Test
    void lessonsStandOpenAndClosedWithTheirEntries() throws IOException {
        Document lessons = page("lessons/index.html");
        Element open = lessons.select("section:has(> #open) tbody tr").first();
        assertThat(open.text()).contains("focus", "refocus after every 3 degrees", "2025-06-14");
        Element closed = lessons.select("section:has(> #closed) tbody tr").first();
        assertThat(closed.text()).contains("cabling", "label both ends of every cable", "2025-05-02", "2025-06-14");
    }

    @Test
    void theSheetForTheNextNightCarriesOpenLessonsAndCautions() throws IOException {
        Document sheet = page("lessons/sheet.html");
        assertThat(sheet.select("section:has(> #lessons)").text())
                .contains("refocus after every 3 degrees")
                .doesNotContain("label both ends");
        assertThat(sheet.select(".cautions").text()).contains("Mains", "ice, roofs and stairs", "laser", "Sun");
        assertThat(sheet.select("nav.others a")).hasSize(4);
    }

    @Test
    void everyPartOfTheOtherRigStandsBesideTheOwn() throws IOException {
        Document rig = page("rigs/heron/index.html");
        assertThat(rig.select(".swap:has(summary:contains(Telescope)) .swaps thead th")
                        .eachText())
                .containsExactly(
                        "Heron, the long tube, as it is",
                        "with the telescope of Wren, the short tube",
                        "Wren, the short tube, as it is");
        assertThat(rig.select(".swap > summary").eachText())
                .anySatisfy(line -> assertThat(line).startsWith("Telescope Focal length, mm 750 → 500"));
        assertThat(rig.select(".swaps tbody tr:contains(Cost) td").eachText()).contains("1539.50 EUR");
    }

    private static Document page(String path) throws IOException {
        return Jsoup.parse(Files.readString(site.resolve(path)));
    }

    private static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.toString().endsWith(".jpg")) {
                    texts.put(folder.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return texts;
    }
}
