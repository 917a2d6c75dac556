package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every real, nasty and derived file answers as its manifest says; the resource gives source and reasoning. */
class RealFramesTest {
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    static Stream<Arguments> rows() {
        return RealFrames.table("real-frames.tsv").stream().map(row -> Arguments.of(row[0], row));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void answersAsTheManifestSays(String name, String[] row) throws Exception {
        Path file = RealFrames.file(name);
        if (!row[8].equals("-")) {
            assertTimeoutPreemptively(
                    PATIENCE,
                    () -> assertThatThrownBy(() -> FitsFile.read(file))
                            .isInstanceOf(UnreadableException.class)
                            .hasMessageContaining(row[8])
                            .hasMessageNotContaining(file.getFileName().toString())
                            .extracting(fault -> ((UnreadableException) fault).hint())
                            .asString()
                            .isNotBlank());
            return;
        }
        FitsImage image = assertTimeoutPreemptively(PATIENCE, () -> FitsFile.read(file));
        FrameHeader header = image.header();
        Plane plane = image.planes().get(0);
        assertThat(plane.width() + "x" + plane.height() + "x" + image.planes().size())
                .isEqualTo(row[1]);
        assertThat(image.bitpix()).hasToString(row[2]);
        assertThat(header.taken().map(taken -> taken.value().toString()).orElse("-"))
                .isEqualTo(time(row[3]));
        number("exposure", header.exposureSeconds(), row[4], 1e-6);
        number("scale", header.sky().map(sky -> new Cited<>(sky.value().arcsecPerPx(), "", "")), row[5], 2e-4);
        for (String fact : row[6].equals("-") ? new String[0] : row[6].split(";")) {
            String[] parts = fact.split("=", 2);
            fact(image, parts[0], parts[1]);
        }
        List<String> odd =
                header.oddities().stream().map(FrameHeader.Oddity::card).toList();
        assertThat(String.join(",", odd)).isEqualTo(row[7].equals("-") ? "" : row[7]);
    }

    private static String time(String text) {
        return text.equals("-") ? text : Instant.parse(text).toString();
    }

    private static void number(String what, Optional<Cited<Double>> value, String expected, double tolerance) {
        if (expected.equals("-") || expected.equals("absent")) {
            assertThat(value).as(what).isEmpty();
            return;
        }
        double number = Double.parseDouble(expected);
        assertThat(value).as(what).isPresent();
        assertThat(value.get().value()).as(what).isCloseTo(number, within(Math.abs(number) * tolerance));
    }

    private static void text(String what, Optional<Cited<String>> value, String expected) {
        assertThat(value.map(Cited::value).orElse("absent")).as(what).isEqualTo(expected);
    }

    private static void fact(FitsImage image, String name, String expected) throws UnreadableException {
        FrameHeader header = image.header();
        switch (name) {
            case "kind" -> assertThat(header.kind()).isEqualTo(FrameKind.valueOf(expected));
            case "filter" -> text(name, header.filter(), expected);
            case "object" -> text(name, header.object(), expected);
            case "instrument" -> text(name, header.instrument(), expected);
            case "binning" -> assertThat(header.binning()).hasToString(expected);
            case "temperature" -> number(name, header.sensorTemperatureC(), expected, 1e-6);
            case "pitch" -> number(name, header.pixelPitchUm(), expected, 1e-6);
            case "focal" -> number(name, header.focalLengthMm(), expected, 1e-6);
            case "aperture" -> number(name, header.apertureMm(), expected, 1e-6);
            case "airmass" -> number(name, header.airmass(), expected, 1e-6);
            case "electrons" -> number(name, header.electronsPerAdu(), expected, 1e-6);
            case "readNoise" -> number(name, header.readNoiseElectrons(), expected, 1e-6);
            case "saturation" -> number(name, header.saturation(), expected, 1e-6);
            case "missing" -> assertThat(PixelSummary.of(image).missing()).hasToString(expected);
            case "lowest" -> assertThat(PixelSummary.of(image).lowest()).isEqualTo(Double.parseDouble(expected));
            case "highest" -> assertThat(PixelSummary.of(image).highest()).isEqualTo(Double.parseDouble(expected));
            case "same pixels" ->
                assertThat(image.pixelDigest())
                        .isEqualTo(FitsFile.read(RealFrames.file(expected)).pixelDigest());
            default -> throw new IllegalArgumentException(name);
        }
    }

    @Test
    void everyFileHasARow() throws Exception {
        List<String> known =
                RealFrames.table("real-frames.tsv").stream().map(row -> row[0]).toList();
        for (String folder : List.of("stars", "nasty", "derived", "extra")) {
            try (Stream<Path> files = Files.list(RealFrames.file(folder))) {
                assertThat(files.map(file -> folder + "/" + file.getFileName())
                                .filter(name -> !name.endsWith(".py"))
                                .sorted())
                        .isSubsetOf(known);
            }
        }
    }
}
