package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class MainTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.execute(new PrintWriter(out), new PrintWriter(err), args);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void aCallWithoutACommandIsWrongAndSaysSo() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("name a command");
    }

    @Test
    void aWrongCallSaysWhatIsWrongAndHowItIsCalled() {
        assertThat(run("rendr")).isEqualTo(2);
        assertThat(err.toString()).contains("there is no command \"rendr\"; did you mean render?");
        assertThat(run("watch", "--port", "abc")).isEqualTo(2);
        assertThat(err.toString()).contains("'abc' is no whole number", "Usage: noctuary watch");
        assertThat(run("note")).isEqualTo(2);
        assertThat(err.toString()).contains("missing: 'FRAMES'").doesNotContain("Exception");
    }

    @Test
    void unknownCommandsAndOptionsAreWrong() {
        assertThat(run("rendr")).isEqualTo(2);
        assertThat(run("render", "--journall", "x")).isEqualTo(2);
        assertThat(run("measure")).isEqualTo(2);
    }

    @Test
    void helpTeachesEveryCommand() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("begin", "note", "render", "watch", "measure", "review", "check", "Exit status");
        for (String command : List.of("begin", "note", "render", "watch", "measure", "review", "check")) {
            assertThat(run(command, "--help")).as(command).isZero();
        }
    }

    @Test
    void theShellLearnsToCompleteCommandsAndOptions() {
        assertThat(run("generate-completion")).isZero();
        assertThat(out.toString()).contains("_complete_noctuary", "watch", "--journal");
    }

    /** Every command and option that the program has, and no word that it has not. */
    @Test
    void completionKnowsWhatTheProgramKnows() throws Exception {
        assertThat(run("generate-completion")).isZero();
        String script = out.toString();
        CommandLine program = Commands.under(new Main());
        assertThat(program.getSubcommands()).hasSize(8);
        program.getSubcommands().forEach((name, command) -> {
            assertThat(script).contains(name);
            command.getCommandSpec()
                    .options()
                    .forEach(option -> assertThat(script).contains(option.longestName()));
        });
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
        Path file = Files.writeString(folder.resolve("completion"), script);
        assertThat(completed(file, "re")).containsExactlyInAnyOrder("render", "review");
        assertThat(completed(file, "watch", "--po")).containsExactly("--port");
    }

    private static List<String> completed(Path script, String... words) throws Exception {
        String line = "source " + script + "; COMP_WORDS=(noctuary " + String.join(" ", words) + "); COMP_CWORD="
                + words.length + "; _complete_noctuary; echo \"${COMPREPLY[@]}\"";
        Process bash = new ProcessBuilder("/bin/bash", "-c", line).start();
        return List.of(new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .strip()
                .split("\\s+"));
    }

    @Test
    void aFolderWithoutEntriesIsNoJournal() {
        for (String command : List.of("render", "watch", "check")) {
            assertThat(run(command, "--journal", file("nowhere"))).as(command).isEqualTo(2);
            assertThat(err.toString()).contains("holds no journal").doesNotContain("Exception");
        }
    }

    @Test
    void aJournalJustBegunRendersCleanly() {
        assertThat(run("begin", file("nights"))).isZero();
        assertThat(run("render", "--journal", file("nights")))
                .as(err.toString())
                .isZero();
        assertThat(folder.resolve("nights/output/index.html")).exists();
    }

    @Test
    void watchRefusesAPortThatIsTakenOrIsNone() throws Exception {
        run("begin", file("nights"));
        try (var taken = new java.net.ServerSocket(0, 1, java.net.InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            assertThat(run("watch", "--journal", file("nights"), "--port", port))
                    .isEqualTo(2);
            assertThat(err.toString()).contains("is taken", "--port 0");
        }
        assertThat(run("watch", "--journal", file("nights"), "--port", "70000")).isEqualTo(2);
        assertThat(run("watch", "--journal", file("nights"), "--port", "x")).isEqualTo(2);
    }

    @Test
    void beginNeverOverwrites() throws Exception {
        run("begin", file("nights"));
        Path settings = folder.resolve("nights/entries/journal.yaml");
        Files.writeString(settings, "title: Mine\n");
        assertThat(run("begin", file("nights"))).isEqualTo(2);
        assertThat(settings).hasContent("title: Mine\n");
    }

    @Test
    void noteFillsInWhatHeadersTellAndNeverOverwrites() throws Exception {
        SmallJournal journal = new SmallJournal(folder);
        Path light = FrameDraft.empty(64, 48, 1)
                .card("IMAGETYP", "'LIGHT'")
                .card("OBJECT", "'m27'")
                .card("DATE-OBS", "'2025-06-14T22:30:00'")
                .card("EXPTIME", "120.0")
                .write(folder.resolve("frames/a.fits"));
        Path dark = FrameDraft.empty(64, 48, 2).card("IMAGETYP", "'DARK'").write(folder.resolve("frames/d.fits"));
        assertThat(run("note", "--journal", folder.toString(), light.toString(), dark.toString()))
                .isZero();
        Path note = journal.root().resolve("entries/2025-06-14-m-27/entry.md");
        assertThat(Files.readString(note)).contains("exposure: [{count: 1, seconds: 120}]", "rig: heron");
        assertThat(run("check", "--journal", folder.toString()))
                .as(out.toString())
                .isZero();
        Files.writeString(note, "mine");
        assertThat(run("note", "--journal", folder.toString(), light.toString()))
                .isZero();
        assertThat(note).hasContent("mine");
    }

    @Test
    void aBrokenFrameIsAProblemAndTheRestGoesOn() throws Exception {
        SmallJournal journal = new SmallJournal(folder);
        journal.entry("m27", "title: A", "frames: ['*.fits']")
                .frame("m27", "good.fits", FrameDraft.stars(3, 1).card("EXPTIME", "60.0"));
        Files.writeString(folder.resolve("entries/m27/bad.fits"), "no image at all");
        assertThat(run("render", "--journal", folder.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("bad.fits").doesNotContain("Exception");
        assertThat(folder.resolve("output/entries/m27/index.html")).exists();
        assertThat(run("check", "--journal", folder.toString())).isEqualTo(1);
        assertThat(out.toString()).contains("1 fault:", "bad.fits");
    }

    @Test
    void renderRefusesAFolderThatIsNotOurs() throws Exception {
        SmallJournal journal = new SmallJournal(folder.resolve("nights"));
        Path precious = Files.createDirectories(folder.resolve("home")).resolve("thesis.txt");
        Files.writeString(precious, "mine");
        assertThat(run("render", "--journal", journal.root().toString(), "--output", file("home")))
                .isEqualTo(2);
        assertThat(precious).hasContent("mine");
        assertThat(err.toString()).contains("did not write");
    }

    @Test
    void renderPutsNoSiteAmongTheNotes() throws Exception {
        SmallJournal journal = new SmallJournal(folder.resolve("nights"));
        Path among = journal.root().resolve("entries/m27/site");
        assertThat(run("render", "--journal", journal.root().toString(), "--output", among.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("lies among the notes");
        assertThat(among).doesNotExist();
    }

    @Test
    void renderSaysWhereNoSiteCanBeWritten() throws Exception {
        SmallJournal journal = new SmallJournal(folder.resolve("nights"));
        Files.writeString(folder.resolve("plain.txt"), "");
        assertThat(run("render", "--journal", journal.root().toString(), "--output", file("plain.txt/site")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("name another folder with --output").doesNotContain("draft");
    }

    @Test
    void measureOfSomeMissingFilesMeasuresTheOthers() {
        Path frame = FrameDraft.stars(3, 1).write(folder.resolve("a.fits"));
        assertThat(run("measure", "--json", frame.toString(), file("none.fits")))
                .isEqualTo(1);
        assertThat(out.toString().lines()).hasSize(2).last().asString().contains("none.fits", "is not there");
    }

    @Test
    void measurePrintsOneObjectALineWithTheKeysOfTheInterface() throws Exception {
        Path frame = FrameDraft.stars(3, 1).card("EXPTIME", "60.0").write(folder.resolve("a.fits"));
        Files.writeString(folder.resolve("b.fits"), "junk");
        assertThat(run("measure", "--json", "--stars", frame.toString(), file("b.fits")))
                .isEqualTo(1);
        String[] lines = out.toString().split("\n");
        assertThat(lines).hasSize(2);
        JsonNode report = new ObjectMapper().readTree(lines[0]);
        List<String> keys = new ArrayList<>();
        report.fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "file",
                        "kind",
                        "width",
                        "height",
                        "planes",
                        "mosaic",
                        "object",
                        "taken",
                        "exposureSeconds",
                        "exposures",
                        "filter",
                        "gain",
                        "sensorTemperatureC",
                        "imageScale",
                        "field",
                        "background",
                        "stars",
                        "zones",
                        "defects",
                        "problems",
                        "list");
        assertThat(report.get("imageScale").isNull()).isTrue();
        assertThat(report.get("stars").get("fwhmPx").get("median").asDouble()).isBetween(2.9, 3.1);
        assertThat(report.get("list").get(0).fieldNames())
                .toIterable()
                .containsExactly("x", "y", "flux", "fwhmPx", "ellipticity", "angleDeg", "snr");
        JsonNode junk = new ObjectMapper().readTree(lines[1]);
        assertThat(junk.get("stars").isNull()).isTrue();
        assertThat(junk.get("problems")).hasSize(1);
    }

    @Test
    void measureOfAMissingFileIsAWrongCall() {
        assertThat(run("measure", file("none.fits"))).isEqualTo(2);
        assertThat(run("measure", "--stars", file("none.fits"))).isEqualTo(2);
    }

    /** Header text may hold terminal control sequences. */
    @Test
    void headerTextCannotSteerTheTerminal() {
        Path frame = FrameDraft.empty(16, 16, 1).card("OBJECT", "'M 27'").write(folder.resolve("a.fits"));
        assertThat(run("measure", frame.toString())).isZero();
        assertThat(out.toString()).doesNotContain("\u001b");
        assertThat(Plain.text("a\u001b[31mb")).isEqualTo("a\uFFFD[31mb");
    }
}
