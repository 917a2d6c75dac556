package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangePagesTest {
    @TempDir
    static Path site;

    private static JsonNode changes;

    @BeforeAll
    static void write() throws IOException {
        FixtureSite.write(site, true, false);
        changes = new ObjectMapper()
                .readTree(Files.readString(site.resolve("data/journal.json")))
                .get("changes");
    }

    private static Document page(String path) throws IOException {
        return Jsoup.parse(Files.readString(site.resolve(path)));
    }

    @Test
    void theVerdictAndItsSentenceStandOnTop() throws IOException {
        Document page = page("changes/rig-heron/index.html");
        assertThat(page.select("h1").text()).contains(" instead of ");
        assertThat(page.select(".opening .verdict").text()).contains("too few nights");
        assertThat(page.select(".opening .stand").text()).endsWith(".");
        assertThat(page.select("nav a[aria-current]").text()).isEqualTo("Changes");
    }

    @Test
    void everyMeasureHasOnePlotAndTheNightsBehindIt() throws IOException {
        Document page = page("changes/rig-heron/index.html");
        assertThat(page.select(".measures > li")).isNotEmpty().allSatisfy(measure -> {
            assertThat(measure.select(".intervals").size()).as("wide and narrow").isIn(0, 2);
            assertThat(measure.select("tbody tr")).isNotEmpty();
            assertThat(measure.select("tbody tr td").eachText()).contains("before", "after");
        });
        assertThat(page.select(".measures details[open] summary em").eachText()).containsExactly("decides");
    }

    @Test
    void theListLeadsToEveryChangeOfTheDownload() throws IOException {
        List<String> linked =
                page("changes/index.html").select(".verdicts h2 a").eachAttr("href");
        List<String> ids = new ArrayList<>();
        changes.forEach(change -> ids.add("../changes/" + change.get("id").asText() + "/index.html"));
        assertThat(linked).containsExactlyInAnyOrderElementsOf(ids).isNotEmpty();
    }

    @Test
    void aNoteLeadsToTheChangeItTellsOf() throws IOException {
        Element line = page("entries/long-tube/index.html").select("#changed ~ .body li").first();
        assertThat(line.select("a").attr("href")).startsWith("../../changes/");
    }

    @Test
    void theChartMarksTheSameChanges() throws IOException {
        List<String> dated = new ArrayList<>();
        changes.forEach(change -> {
            if (!change.get("date").isNull()) {
                dated.add(change.get("date").asText());
            }
        });
        assertThat(page("index.html").select(".marks time").eachText()).containsExactlyElementsOf(dated);
    }

    @Test
    void theDownloadHasTheShapeOfTheInterface() {
        assertThat(changes).isNotEmpty().allSatisfy(change -> {
            List<String> keys = new ArrayList<>();
            change.fieldNames().forEachRemaining(keys::add);
            assertThat(keys).containsExactly("id", "kind", "date", "before", "after", "measures");
            assertThat(change.get("kind").asText()).isIn("rig", "site", "way", "choice");
        });
    }
}
