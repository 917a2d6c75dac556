package noctuary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import noctuary.effect.Effect;
import noctuary.effect.StarFates;
import noctuary.entry.Entry;
import noctuary.entry.Journal;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's two argued pairs of versions against the steps that plan.yaml planted in them. */
class DemoVersionsTest {
    @TempDir
    private static Path cache;

    private static final Map<String, VersionSheet> SHEETS = new HashMap<>();
    private static Journal journal;
    private static VersionSheets versions;

    @BeforeAll
    static void measure() {
        journal = Journal.read(Path.of("").toAbsolutePath());
        versions = new VersionSheets(new MeasuredFiles(cache), cache);
        for (String slug : List.of("2024-12-06-m45", "2026-01-17-m42")) {
            versions.of(entry(slug))
                    .forEach(v -> SHEETS.put(slug + " " + v.version().name(), v));
        }
    }

    private static Entry entry(String slug) {
        return journal.entries().stream()
                .filter(e -> e.slug().equals(slug))
                .findFirst()
                .orElseThrow();
    }

    private static Effect effect(String name) {
        return SHEETS.get(name).effect().orElseThrow();
    }

    private static double lostShare(String name) {
        StarFates fates = effect(name).fates().orElseThrow();
        return fates.lostShare(20, 20).getAsDouble();
    }

    /** plan.yaml: stretch 300 and 300, 600 and 250. */
    @Test
    void theStretchesAreThoseOfThePlan() {
        assertThat(strength("2024-12-06-m45 gentle")).isCloseTo(300, within(0.15 * 300));
        assertThat(strength("2024-12-06-m45 heavy")).isCloseTo(300, within(0.15 * 300));
        assertThat(strength("2026-01-17-m42 layers")).isCloseTo(600, within(0.15 * 600));
        assertThat(strength("2026-01-17-m42 darker")).isCloseTo(250, within(0.15 * 250));
    }

    private static double strength(String name) {
        return effect(name).stretch().orElseThrow().strength().value().getAsDouble();
    }

    /** plan.yaml: smooth 0.25 against 0.9. */
    @Test
    void theHeavyHandTakesMoreNoiseAndTheFaintStars() {
        double gentle = effect("2024-12-06-m45 gentle").noiseRatio(1).value().getAsDouble();
        double heavy = effect("2024-12-06-m45 heavy").noiseRatio(1).value().getAsDouble();
        assertThat(heavy).isLessThan(0.8 * gentle);
        assertThat(lostShare("2024-12-06-m45 gentle")).isLessThan(0.02);
        assertThat(lostShare("2024-12-06-m45 heavy")).isGreaterThan(0.5);
        assertThat(SHEETS.get("2024-12-06-m45 heavy").findings())
                .extracting(Observation::id)
                .contains("version-noise-taken", "version-background-cut", "version-detail-lost");
        assertThat(SHEETS.get("2024-12-06-m45 gentle").findings())
                .extracting(Observation::id)
                .doesNotContain("version-background-cut", "version-detail-lost", "version-stars-invented");
    }

    /** plan.yaml: black 0.01 against 0.08; the share is counted here from the file by the JDK. */
    @Test
    void theDarkerVersionIsCutAtTheBottom() throws IOException {
        Effect layers = effect("2026-01-17-m42 layers");
        Effect darker = effect("2026-01-17-m42 darker");
        assertThat(darker.backgroundCutPercent().value().getAsDouble())
                .isGreaterThan(layers.backgroundCutPercent().value().getAsDouble() + 20);
        Path file = Path.of("entries/2026-01-17-m42/darker.jpg");
        BufferedImage image = ImageIO.read(file.toFile());
        long black = 0;
        for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
            int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
            black += (rgb & 0xFF) == 0 || (rgb & 0xFF00) == 0 || (rgb & 0xFF0000) == 0 ? 1 : 0;
        }
        double percent = 100.0 * black / image.getWidth() / image.getHeight();
        assertThat(darker.clippedBlackPercent()).isCloseTo(percent, within(0.1));
    }

    @Test
    void theSecondTimeComesFromTheCacheAndIsTheSame() throws IOException {
        List<VersionSheet> again = versions.of(entry("2024-12-06-m45"));
        assertThat(again.get(1)).isEqualTo(SHEETS.get("2024-12-06-m45 heavy"));
        try (var files = Files.list(cache.resolve("effects"))) {
            assertThat(files).hasSize(4);
        }
    }
}
