package noctuary.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two processes render one journal at once, from an empty cache: both succeed, and every site is whole. */
class TwoRendersIT {
    private static final Path JAR = Path.of("target", "noctuary.jar").toAbsolutePath();
    private static final int ENTRIES = 8;

    @TempDir
    private Path folder;

    private Path root;

    @BeforeEach
    void write() {
        root = folder.resolve("nights");
        SmallJournal journal = new SmallJournal(root);
        for (int e = 0; e < ENTRIES; e++) {
            journal.entry("e" + e, "title: Entry " + e, "frames: [a.fits]")
                    .frame("e" + e, "a.fits", FrameDraft.stars(3, e).card("EXPTIME", "60.0"));
        }
    }

    private Process start(String name, String... options) throws IOException {
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString(), "render"));
        call.addAll(List.of("--journal", root.toString()));
        call.addAll(List.of(options));
        return new ProcessBuilder(call)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(name).toFile())
                .start();
    }

    private void assertDone(String name, Process process) throws Exception {
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue())
                .as(Files.readString(folder.resolve(name)))
                .isZero();
    }

    /** Digests of all files, by path. */
    private static Map<String, Integer> site(Path output) throws IOException {
        Map<String, Integer> site = new TreeMap<>();
        try (Stream<Path> all = Files.walk(output)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                site.put(output.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        for (int e = 0; e < ENTRIES; e++) {
            assertThat(site).containsKey("entries/e" + e + "/index.html");
        }
        assertThat(site).containsKeys("index.html", "data/journal.json");
        return site;
    }

    private void assertNothingLeft() throws IOException {
        try (Stream<Path> left = Files.list(root)) {
            assertThat(left.map(p -> p.getFileName().toString())).noneMatch(name -> name.contains("-draft-"));
        }
    }

    @Test
    void intoOneFolder() throws Exception {
        Process one = start("one.txt");
        Process other = start("other.txt");
        assertDone("one.txt", one);
        assertDone("other.txt", other);
        Map<String, Integer> together = site(root.resolve("output"));
        assertNothingLeft();
        assertDone(
                "alone.txt",
                start("alone.txt", "--anew", "--output", folder.resolve("alone").toString()));
        assertThat(together).isEqualTo(site(folder.resolve("alone")));
    }

    @Test
    void withOneCacheIntoTwoFolders() throws Exception {
        Path first = root.resolve("first");
        Path second = root.resolve("second");
        Process one = start("one.txt", "--output", first.toString());
        Process other = start("other.txt", "--output", second.toString());
        assertDone("one.txt", one);
        assertDone("other.txt", other);
        assertThat(site(first)).isEqualTo(site(second));
        assertNothingLeft();
    }
}
