package noctuary.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The downloads against the product's own page of interfaces, whose key lists are repeated here word for word. */
class DownloadsTest {
    private final Map<String, byte[]> files = files(true);

    @Test
    void theJournalHasExactlyTheAgreedKeys() throws IOException {
        JsonNode journal = json(files);
        assertKeys(journal, "entries rigs sites targets changes lessons");
        assertKeys(
                journal.at("/entries/0"),
                "slug title target night nights rig site exposureSeconds exposureByFilter frames imageScaleArcsecPerPx "
                        + "imageScaleFrom fwhmArcsec fwhmPx ellipticity backgroundLevel backgroundNoise findings problems "
                        + "versions");
        assertKeys(
                entry(journal, "long-tube").at("/versions/0"),
                "name from steps noiseRatio fwhmRatio starsKept starsLost starsInvented clippedBlackPercent "
                        + "clippedWhitePercent");
        assertKeys(journal.at("/rigs/0"), "id name imageScaleArcsecPerPx focalRatio backFocusMm mountLoad cost checks");
        assertKeys(journal.at("/rigs/0/backFocusMm"), "required actual");
        assertKeys(journal.at("/rigs/0/mountLoad"), "massKg capacityKg");
        assertKeys(journal.at("/rigs/0/checks/0"), "id level text");
        assertKeys(journal.at("/targets/0"), "name reference attempts");
        assertKeys(journal.at("/targets/0/attempts/0"), "slug matched rmsPx scale rotationDeg mirrored");
        assertKeys(journal.at("/lessons/0"), "id about do openedBy closedBy seenAgain");
    }

    @Test
    void whatIsNotKnownIsNullAndNeverANumber() throws IOException {
        JsonNode odd = entry(json(files), "odd");
        for (String key : List.of("rig", "imageScaleArcsecPerPx", "imageScaleFrom", "fwhmArcsec", "backgroundNoise")) {
            assertThat(odd.get(key).isNull()).as(key).isTrue();
        }
        assertThat(odd.get("exposureSeconds").asDouble()).isEqualTo(600);
        assertThat(odd.get("frames").asInt()).isZero();
    }

    @Test
    void aClosedLessonNamesTheEntryThatClosedIt() throws IOException {
        JsonNode lessons = json(files).get("lessons");
        assertThat(lessons.findValuesAsText("id")).containsExactly("long-tube#focus", "pinwheel#cabling");
        assertThat(lessons.get(0).get("closedBy").isNull()).isTrue();
        assertThat(lessons.get(1).get("closedBy").asText()).isEqualTo("long-tube");
        assertThat(lessons.get(1).get("do").asText()).isEqualTo("label both ends of every cable");
    }

    @Test
    void costIsSummedByCurrencyWithoutRounding() {
        assertThat(text("data/journal.json")).contains("\"EUR\" : 1539.50\n");
    }

    @Test
    void coordinatesStandOnlyWherePublishedAndThenRounded() throws IOException {
        assertThat(json(files).at("/sites/0/latitudeDeg").asDouble()).isEqualTo(44.3);
        JsonNode secret = json(files(false)).at("/sites/0");
        assertKeys(secret, "id name latitudeDeg longitudeDeg elevationM");
        assertThat(secret.get("latitudeDeg").isNull()).isTrue();
    }

    @Test
    void textEndsInOneNewlineAndHasNoOther() {
        files.keySet()
                .forEach(name -> assertThat(text(name))
                        .as(name)
                        .endsWith("\n")
                        .doesNotEndWith("\n\n")
                        .doesNotContain("\r"));
    }

    @Test
    void theSpreadsheetsHaveTheColumnsTheirPageDescribes() {
        assertThat(text("data/entries.csv").lines().findFirst()).contains(String.join(",", names(Columns.ENTRIES)));
        assertThat(text("data/frames.csv").lines().findFirst()).contains(String.join(",", names(Columns.FRAMES)));
        assertThat(text("data/entries.csv").lines()).hasSize(1 + 5);
        assertThat(text("data/frames.csv").lines()).hasSize(1 + 20 + 30 + 48 + 30 + 26);
    }

    @Test
    void framesAreNumberedAndSayWhetherTheyCount() {
        List<String> rows = text("data/frames.csv")
                .lines()
                .filter(row -> row.startsWith("long-tube,"))
                .toList();
        assertThat(rows.get(0)).startsWith("long-tube,1,lights/l_001.fits,light,true,2025-06-14T20:40:00Z,120.0,");
        assertThat(rows.get(3)).startsWith("long-tube,4,lights/l_004.fits,light,false,");
    }

    @Test
    void aCellThatBeginsLikeAFormulaIsMadeText() {
        assertThat(Tables.cell("=cmd|' /C calc'!A0")).isEqualTo("'=cmd|' /C calc'!A0");
        assertThat(Tables.cell("@SUM(1)")).startsWith("'");
        assertThat(Tables.cell("M 31")).isEqualTo("M 31");
        assertThat(Tables.cell(-3.5)).isEqualTo("-3.5");
    }

    private String text(String path) {
        return new String(files.get(path), StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> files(boolean published) {
        try {
            Map<String, byte[]> files = new HashMap<>();
            for (Downloads.Download file : new Downloads(new Ledger(Fixture.content(published))).files()) {
                files.put(file.path(), file.content().bytes());
            }
            return files;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode json(Map<String, byte[]> files) throws IOException {
        return new ObjectMapper().readTree(files.get("data/journal.json"));
    }

    private static JsonNode entry(JsonNode journal, String slug) {
        for (JsonNode entry : journal.get("entries")) {
            if (entry.get("slug").asText().equals(slug)) {
                return entry;
            }
        }
        throw new IllegalArgumentException(slug);
    }

    private static void assertKeys(JsonNode object, String keys) {
        List<String> found = new ArrayList<>();
        object.fieldNames().forEachRemaining(found::add);
        assertThat(found).containsExactly(keys.split(" "));
    }

    private static List<String> names(List<noctuary.site.page.DownloadsPage.Column> columns) {
        return columns.stream().map(column -> column.name()).toList();
    }
}
