package noctuary.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import nom.tam.fits.BasicHDU;
import nom.tam.fits.Fits;
import nom.tam.fits.FitsException;
import nom.tam.fits.Header;
import nom.tam.image.compression.hdu.CompressedImageHDU;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of the demo journal are those that the plan gives, and say what they are. */
class DemoFilesTest {
    private static final Path ENTRIES = Path.of("entries");
    private static final List<Map<String, String>> TRUTH = TruthTable.read();

    @Test
    void aRebuiltStackHasTheSameBytes(@TempDir Path folder) throws IOException {
        PlannedEntry entry = planned("2025-12-13-ngc891");
        DemoNight.write(entry, folder);
        assertThat(folder.resolve("stack.fits.fz"))
                .hasSameBinaryContentAs(ENTRIES.resolve(entry.slug()).resolve("stack.fits.fz"));
    }

    @Test
    void theTruthFileIsThePlansTruth() {
        for (Map<String, String> row : TRUTH) {
            if (row.get("kind").equals("single")) {
                PlannedEntry entry = planned(row.get("slug"));
                int frame = Integer.parseInt(row.get("file").replaceAll("\\D", "")) - 1;
                Moment moment = Moment.of(entry, frame);
                assertThat(Double.parseDouble(row.get("altitude_deg"))).isCloseTo(moment.altitudeDeg(), within(0.006));
                assertThat(Double.parseDouble(row.get("defocus_um"))).isCloseTo(moment.defocusUm(), within(0.06));
            }
        }
    }

    @Test
    void truthAndFilesListTheSame() {
        assertThat(TRUTH.stream().map(row -> row.get("slug") + "/" + row.get("file")))
                .containsExactlyInAnyOrderElementsOf(files(".fz"));
    }

    @Test
    void everyHeaderSaysWhatTheFrameIs() throws IOException, FitsException {
        for (Map<String, String> row : TRUTH) {
            Header header = header(ENTRIES.resolve(row.get("slug")).resolve(row.get("file")));
            DemoRig rig = DemoRig.of(row.get("rig"));
            String seconds = rig.colour() ? "EXPTIME" : "EXPOSURE";
            assertThat(header.getIntValue("ZNAXIS1")).isEqualTo(rig.width());
            assertThat(header.getIntValue("ZNAXIS2")).isEqualTo(rig.height());
            assertThat(header.getIntValue("ZBITPIX")).isEqualTo(16);
            assertThat(header.getDoubleValue("BZERO")).isEqualTo(32768);
            assertThat(header.getStringValue("ZCMPTYPE")).isEqualTo("RICE_1");
            assertThat(header.getStringValue("INSTRUME")).isEqualTo(rig.instrument());
            assertThat(header.getDoubleValue(seconds)).isEqualTo(Double.parseDouble(row.get("seconds")));
            assertThat(LocalDateTime.parse(header.getStringValue("DATE-OBS")) + ":00Z")
                    .startsWith(row.get("start").substring(0, 16));
            assertThat(header.containsKey("CD1_1")).isEqualTo(row.get("kind").equals("stack") && !rig.colour());
            assertThat(header.containsKey("LIVETIME")).isEqualTo(row.get("kind").equals("stack"));
            assertThat(header.containsKey("BAYERPAT")).isEqualTo(row.get("kind").equals("single") && rig.colour());
        }
    }

    /** FITS 4.0, 4.1.2.1: a keyword is at most eight of these characters. */
    @Test
    void everyKeywordIsStandard() throws IOException, FitsException {
        for (Map<String, String> row : TRUTH) {
            Header header = header(ENTRIES.resolve(row.get("slug")).resolve(row.get("file")));
            header.iterator().forEachRemaining(card -> assertThat(card.getKey()).matches("[A-Z0-9_-]{0,8}"));
        }
    }

    @Test
    void theWholeJournalStaysBelowTwentyFiveMegabytes() throws IOException {
        try (Stream<Path> all = Files.walk(ENTRIES)) {
            assertThat(all.mapToLong(DemoFilesTest::size).sum()).isBetween(15_000_000L, 25_000_000L);
        }
    }

    private static Header header(Path file) throws IOException, FitsException {
        try (Fits fits = new Fits(file.toFile())) {
            BasicHDU<?>[] units = fits.read();
            assertThat(units).hasSize(2);
            assertThat(units[1]).isInstanceOf(CompressedImageHDU.class);
            return units[1].getHeader();
        }
    }

    private static PlannedEntry planned(String slug) {
        return Plan.read().stream()
                .collect(Collectors.toMap(PlannedEntry::slug, Function.identity()))
                .get(slug);
    }

    private static TreeSet<String> files(String ending) {
        try (Stream<Path> all = Files.walk(ENTRIES)) {
            return all.filter(file -> file.toString().endsWith(ending))
                    .map(file -> ENTRIES.relativize(file).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long size(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.size(file) : 0;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
