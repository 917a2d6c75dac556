package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import noctuary.measure.FrameDraft;
import noctuary.review.PlantedJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewCommandTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private PlantedJournal journal;

    @BeforeEach
    void begin() {
        journal = new PlantedJournal(folder);
    }

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        List<String> all = new ArrayList<>(List.of("review", "--journal", folder.toString()));
        all.addAll(List.of(args));
        return Main.execute(new PrintWriter(out), new PrintWriter(err), all.toArray(String[]::new));
    }

    private PlantedJournal bothRigs() {
        return journal.night("2025-01-10", "wren", "terrace", "M 42", 0.8)
                .night("2025-03-20", "wren", "terrace", "M 51", 0.85)
                .night("2025-05-24", "heron", "terrace", "M 51", 0.6)
                .night("2025-06-20", "heron", "terrace", "M 13", 0.65);
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void twoRigsAreComparedInWords() {
        bothRigs();
        assertThat(run("wren", "heron")).as(err.toString()).isZero();
        assertThat(out.toString())
                .contains(
                        "Heron against Wren",
                        "TOO FEW NIGHTS (Guiding RMS): ",
                        "Guiding RMS, arcsec *",
                        "What else was not the same")
                .contains("Star FWHM: There is no frame or stack (on either side).");
    }

    @Test
    void jsonIsOneObjectInTheShapeOfTheDownload() throws Exception {
        bothRigs();
        assertThat(run("rig-heron", "--json")).as(err.toString()).isZero();
        assertThat(out.toString().lines()).hasSize(1);
        JsonNode change = new ObjectMapper().readTree(out.toString());
        assertThat(keys(change)).containsExactly("id", "kind", "date", "before", "after", "measures");
        assertThat(change.get("id").asText()).isEqualTo("rig-heron");
        assertThat(change.get("kind").asText()).isEqualTo("rig");
        assertThat(change.get("date").asText()).isEqualTo("2025-05-20");
        assertThat(change.get("before").asText()).isEqualTo("wren");
        assertThat(change.get("after").asText()).isEqualTo("heron");
        assertThat(change.get("measures")).isNotEmpty().allSatisfy(m -> {
            assertThat(keys(m))
                    .containsExactly(
                            "name",
                            "unit",
                            "nightsBefore",
                            "nightsAfter",
                            "before",
                            "after",
                            "shift",
                            "low",
                            "high",
                            "p",
                            "verdict",
                            "why");
            assertThat(m.get("verdict").asText()).isIn("better", "worse", "no-difference", "too-few", "confounded");
            assertThat(m.get("why").asText()).endsWith(".");
        });
        JsonNode guiding = change.get("measures").get(0);
        assertThat(guiding.get("name").asText()).isEqualTo("guidingRmsArcsec");
        assertThat(guiding.get("nightsBefore").asInt()).isEqualTo(2);
        assertThat(guiding.get("before").asDouble()).isBetween(0.8249, 0.8251);
        assertThat(guiding.get("verdict").asText()).isEqualTo("too-few");
    }

    @Test
    void unknownNamesGetTheLikelyOne() {
        bothRigs();
        assertThat(run("wrenn", "heron")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no rig or site \"wrenn\"; did you mean \"wren\"?");
        assertThat(run("rig-herom")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no change \"rig-herom\"; did you mean \"rig-heron\"?");
    }

    @Test
    void bothSidesTheSameIsAWrongCall() {
        bothRigs();
        assertThat(run("heron", "heron")).isEqualTo(2);
        assertThat(err.toString()).contains("both sides are \"heron\"");
    }

    @Test
    void aRigAgainstASiteIsAWrongCall() {
        bothRigs();
        assertThat(run("heron", "ridge")).isEqualTo(2);
        assertThat(err.toString()).contains("\"heron\" is a rig and \"ridge\" a site; compare two rigs or two sites");
    }

    @Test
    void aRigAloneAndAChangeWithASecondNameSayWhatToDo() {
        bothRigs();
        assertThat(run("heron")).isEqualTo(2);
        assertThat(err.toString())
                .contains(
                        "\"heron\" is a rig; name another one beside it, or a change (rig-heron, rig-heron-2025-08-01)");
        assertThat(run("rig-heron", "wren")).isEqualTo(2);
        assertThat(err.toString()).contains("is a change and has both its sides; name it alone");
    }

    @Test
    void aJournalWithoutChangesSaysWhatMakesOne() throws Exception {
        Files.delete(folder.resolve("entries/rigs/wren.md"));
        journal.file("rigs/heron.md", "---", "name: Heron", "---").night("2025-05-24", "heron", "terrace", "M 51", 0.6);
        assertThat(run("rig-heron")).isEqualTo(2);
        assertThat(err.toString()).contains("nor any other in this journal yet", "a second rig or site");
    }

    @Test
    void oneEntryOnlyLeavesASideWithoutNights() {
        journal.night("2025-05-24", "heron", "terrace", "M 51", 0.6);
        assertThat(run("wren", "heron")).isZero();
        assertThat(out.toString()).contains("TOO FEW NIGHTS: There is no night before yet.");
    }

    @Test
    void aRigWithoutPixelSizeSaysWhatIsMissing() {
        journal.file("rigs/heron.md", "---", "name: Heron", "in use: 2025-05-20 on", "---")
                .night("2025-05-01", "wren", "terrace", "M 51", 0.8);
        journal.small()
                .entry("b", "target: M 51", "rig: heron", "site: terrace", "frames: ['*.fits']")
                .frame("b", "f.fits", FrameDraft.stars(3, 5).card("DATE-OBS", "'2025-09-10T22:00:00'"));
        run("wren", "heron");
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("Star FWHM: There is no frame or stack; the image scale is not known (on either side).");
    }

    @Test
    void nightsWithoutTimeAreLeftOutByName() {
        bothRigs();
        journal.small().entry("undated", "target: M 1", "rig: heron", "exposure: [{count: 1, seconds: 60}]");
        assertThat(run("wren", "heron")).isZero();
        assertThat(out.toString()).contains("Left out, because nobody tells their night\n- undated");
    }

    @Test
    void faultsElsewhereMakeTheStatusOne() {
        bothRigs();
        journal.small().entry("odd", "rig: heron", "exposure: [{count: x, seconds: 60}]");
        assertThat(run("wren", "heron")).isEqualTo(1);
        assertThat(out.toString()).contains("Heron against Wren");
        assertThat(err.toString()).contains("entries/odd/entry.md");
    }

    @Test
    void sitesAreComparedToo() {
        bothRigs().night("2025-06-30", "heron", "ridge", "M 13", 0.6);
        assertThat(run("terrace", "ridge")).isZero();
        assertThat(out.toString()).contains("Ridge instead of Terrace");
    }

    @Test
    void noNameAndAFolderWithoutAJournalAreWrongCalls() {
        assertThat(run()).isEqualTo(2);
        assertThat(Main.execute(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        "review",
                        "--journal",
                        folder.resolve("nowhere").toString(),
                        "a",
                        "b"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("holds no journal");
    }
}
