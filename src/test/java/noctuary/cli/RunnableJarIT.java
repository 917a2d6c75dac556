package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import noctuary.measure.FrameDraft;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a keeper runs it: packed, in a process of its own. */
class RunnableJarIT {
    private static final Path JAR = Path.of("target", "noctuary.jar").toAbsolutePath();
    private static final Path LAUNCHER = JAR.resolveSibling("noctuary");

    @TempDir
    private Path folder;

    private String run(String... args) throws IOException, InterruptedException {
        return run(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()),
                args);
    }

    private String run(List<String> program, String... args) throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(program);
        call.addAll(List.of(args));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(call)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(text).isZero();
        return text;
    }

    @Test
    void theFirstTenMinutesOfTheReadmeWork() throws Exception {
        run("begin", "nights");
        Path frame = FrameDraft.stars(3, 1)
                .card("OBJECT", "'M 27'")
                .card("DATE-OBS", "'2025-06-14T22:30:00'")
                .card("EXPTIME", "120.0")
                .write(folder.resolve("frames/a.fits"));
        run("note", "--journal", "nights", frame.toString());
        assertThat(run("render", "--journal", "nights")).startsWith("1 entry, ");
        assertThat(folder.resolve("nights/output/entries/2025-06-14-m-27/index.html"))
                .exists();
        assertThat(run("measure", "--json", frame.toString())).startsWith("{\"file\":");
    }

    @Test
    void nothingButOurOwnWordsReachesTheTerminal() throws Exception {
        run("begin", "nights");
        assertThat(run("render", "--journal", "nights").lines()).hasSize(1);
    }

    @Test
    void theLauncherRunsTheJarFromAnywhere() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no /bin/sh here");
        Path frame = FrameDraft.stars(3, 1).write(folder.resolve("with blank/a.fits"));
        Path link = Files.createSymbolicLink(folder.resolve("linked"), LAUNCHER);
        for (Path launcher : List.of(LAUNCHER, link)) {
            assertThat(run(List.of(launcher.toString()), "measure", frame.toString()))
                    .isEqualTo(run("measure", frame.toString()));
        }
    }

    @Test
    void anArchiveOfClassesThatDoesNotFitIsPassedOver() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no /bin/sh here");
        Path moved = Files.createDirectory(folder.resolve("moved"));
        for (String name : List.of("noctuary", "noctuary.jar", "noctuary.jsa")) {
            Files.copy(JAR.resolveSibling(name), moved.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
        }
        assertThat(run(List.of(moved.resolve("noctuary").toString()), "--version"))
                .isEqualTo(run("--version"));
        Files.writeString(moved.resolve("noctuary.jsa"), "no archive");
        assertThat(run(List.of(moved.resolve("noctuary").toString()), "--version"))
                .isEqualTo(run("--version"));
    }
}
