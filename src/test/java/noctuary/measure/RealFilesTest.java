package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.fits.RealFrames;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Open frames of observatories and surveys, and the broken ones of FITS test suites, through the whole measurement. */
class RealFilesTest {
    @TestFactory
    Stream<DynamicTest> everyFileIsAnsweredWithAReportOrAReason() throws IOException {
        Path frames = RealFrames.folder();
        List<Path> files;
        try (Stream<Path> all = Files.walk(frames)) {
            files = all.filter(Files::isRegularFile)
                    .filter(f -> !f.toString().matches(".*\\.(md|tsv|py|cat)"))
                    .sorted()
                    .toList();
        }
        assertThat(files).hasSizeGreaterThan(80);
        return files.stream()
                .map(f -> DynamicTest.dynamicTest(frames.relativize(f).toString(), () -> answered(f)));
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
