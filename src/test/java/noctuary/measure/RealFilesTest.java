package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Open frames of observatories and surveys, and the broken ones of FITS test suites, through the whole measurement. */
class RealFilesTest {
    private static final Path FRAMES = Path.of(System.getProperty("real.frames", "../shared/real-frames"));

    @TestFactory
    Stream<DynamicTest> everyFileIsAnsweredWithAReportOrAReason() throws IOException {
        assumeTrue(Files.isDirectory(FRAMES), "no folder of real frames; name one with -Dreal.frames=DIR");
        List<Path> files;
        try (Stream<Path> all = Files.walk(FRAMES)) {
            files = all.filter(Files::isRegularFile)
                    .filter(f -> !f.toString().matches(".*\\.(md|tsv|py|cat)"))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThan(80);
        return files.stream()
                .map(f -> DynamicTest.dynamicTest(FRAMES.relativize(f).toString(), () -> answered(f)));
    }

    private static void answered(Path file) throws IOException {
        Measurement measurement = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Meter.measure(file));
        FrameReport report = FrameReports.of(file.getFileName().toString(), measurement, OptionalDouble.empty());
        JsonNode json = new ObjectMapper().readTree(ReportJson.of(report));
        assertThat(json.get("width").isNull()).isEqualTo(!measurement.readable());
        boolean noWidth = json.get("stars").isNull()
                || json.get("stars").get("fwhmPx").get("median").isNull();
        if (noWidth) {
            assertThat(report.problems()).as("a reason for no star width").isNotEmpty();
        }
        assertThat(report.problems())
                .noneMatch(p -> p.what().contains("Exception") || p.what().isBlank());
    }
}
