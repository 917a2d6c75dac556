package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A keeper's name, home, disk, serial numbers and place, planted everywhere, and looked for in every byte of the site. */
class PrivacyTest {
    /** JPEG: JFIF, tables, start of frame. No application segment but JFIF's and no comment. */
    private static final Set<String> JPEG_PARTS = Set.of("E0", "DB", "C0", "C2", "C4", "DD", "EE");

    private static final Set<String> PNG_PARTS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

    @TempDir
    static Path folder;

    private static PlantedLife life;
    private static Path site;

    @BeforeAll
    static void render() throws Exception {
        life = new PlantedLife(folder.resolve("closed"), "{coordinates: no, file names: no}");
        site = folder.resolve("site");
        Rendering.render(life.root(), site, Progress.SILENT);
    }

    @Test
    void theSearchFindsWhatIsPlanted() throws IOException {
        List<String> found = leaks(life.root().getParent().getParent(), PlantedLife.MARKS);
        for (String planted : List.of("zqname-gentle.png", "zqname-soft.jpg", "zqname-three.gif", "zqname-flat.tif")) {
            assertThat(found).anyMatch(leak -> leak.contains(planted) && leak.endsWith(": zqserial"));
        }
        assertThat(leaks(life.root().getParent().getParent(), PlantedLife.PLACES))
                .hasSizeGreaterThan(8);
    }

    @Test
    void nothingOfTheKeepersLifeReachesTheSite() throws IOException {
        assertThat(files(site)).hasSizeGreaterThan(25);
        assertThat(site.resolve("entries/crescent/stack-200.jpg")).exists();
        assertThat(leaks(site, PlantedLife.MARKS)).isEmpty();
        assertThat(leaks(site, PlantedLife.PLACES)).isEmpty();
    }

    @Test
    void picturesHoldNothingButPixels() throws IOException {
        List<String> parts = new ArrayList<>();
        for (Path file : files(site)) {
            Spelled.parts(Files.readAllBytes(file)).stream()
                    .filter(part -> !JPEG_PARTS.contains(part) && !PNG_PARTS.contains(part))
                    .forEach(part -> parts.add(site.relativize(file) + ": " + part));
        }
        assertThat(files(site).stream().filter(f -> f.toString().matches(".*\\.(png|jpg)")))
                .hasSizeGreaterThan(5);
        assertThat(parts).isEmpty();
    }

    /** A tenth of a degree is some 10 km. */
    @Test
    void publishedCoordinatesAreRounded() throws Exception {
        PlantedLife open = new PlantedLife(folder.resolve("open"), "{coordinates: yes, file names: yes}");
        Path told = folder.resolve("told");
        Rendering.render(open.root(), told, Progress.SILENT);
        JsonNode terrace = new ObjectMapper()
                .readTree(told.resolve("data/journal.json").toFile())
                .get("sites")
                .get(0);
        assertThat(terrace.get("latitudeDeg").asDouble()).isEqualTo(47.2);
        assertThat(terrace.get("longitudeDeg").asDouble()).isEqualTo(8.8);
        assertThat(terrace.get("elevationM").asDouble()).isEqualTo(600);
        assertThat(leaks(told, PlantedLife.PLACES)).isEmpty();
        assertThat(leaks(told, List.of("zqname-1.fits"))).isNotEmpty();
        assertThat(leaks(told, List.of("zquser", "zq user", "zqlane", "zqserial", "zqpicture")))
                .isEmpty();
    }

    /** Each as {@code file: mark}. */
    private static List<String> leaks(Path top, List<String> marks) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(top)) {
            List<String> readings = new ArrayList<>(Spelled.of(Files.readAllBytes(file)));
            readings.add(Spelled.named(top.relativize(file)));
            marks.stream()
                    .filter(mark -> readings.stream().anyMatch(text -> text.contains(mark)))
                    .forEach(mark -> found.add(top.relativize(file) + ": " + mark));
        }
        return found;
    }

    private static List<Path> files(Path top) throws IOException {
        try (Stream<Path> all = Files.walk(top)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
