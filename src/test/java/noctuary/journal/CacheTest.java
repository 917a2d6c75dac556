package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import noctuary.measure.FrameDraft;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheTest {
    @TempDir
    private Path root;

    @BeforeEach
    void journal() {
        new SmallJournal(root)
                .entry("m27", "title: A", "frames: ['*.fits']", "stack: s.fits")
                .frame("m27", "a.fits", FrameDraft.stars(3, 1).card("EXPTIME", "60.0"))
                .frame(
                        "m27",
                        "s.fits",
                        FrameDraft.stars(3, 2).card("EXPTIME", "60.0").card("NCOMBINE", "9"));
    }

    private Rendering.Outcome render() throws Exception {
        return Rendering.render(root, root.resolve("output"), Progress.SILENT);
    }

    private Map<String, String> site() throws Exception {
        Map<String, String> files = new TreeMap<>();
        Path output = root.resolve("output");
        try (Stream<Path> all = Files.walk(output)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                files.put(output.relativize(file).toString(), text);
            }
        }
        return files;
    }

    @Test
    void theSecondRenderMeasuresNothingAndWritesTheSameBytes() throws Exception {
        assertThat(render().measuredNow()).isEqualTo(2);
        Map<String, String> first = site();
        assertThat(render().measuredNow()).isZero();
        assertThat(site()).isEqualTo(first);
    }

    @Test
    void aTouchedFileIsKnownByItsContent() throws Exception {
        render();
        Path frame = root.resolve("entries/m27/a.fits");
        Files.write(frame, Files.readAllBytes(frame));
        assertThat(render().measuredNow()).isZero();
    }

    @Test
    void aChangedFileIsMeasuredAgain() throws Exception {
        render();
        FrameDraft.stars(4, 3).card("EXPTIME", "60.0").write(root.resolve("entries/m27/a.fits"));
        assertThat(render().measuredNow()).isEqualTo(1);
    }

    @Test
    void aDamagedOrDeletedCacheCostsTimeOnly() throws Exception {
        render();
        Map<String, String> first = site();
        for (String junk : List.of("", "{\"engine\":\"9\"}", "\u0000\u0001 not ours")) {
            try (Stream<Path> all = Files.walk(root.resolve(".noctuary"))) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    Files.writeString(file, junk);
                }
            }
            assertThat(render().measuredNow()).as(junk).isEqualTo(2);
            assertThat(site()).isEqualTo(first);
        }
    }

    @Test
    void aFileInTheCachesPlaceIsRefusedWithItsName() throws Exception {
        Files.writeString(root.resolve(".noctuary"), "mine");
        assertThatThrownBy(this::render)
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(".noctuary is not a folder");
        assertThat(root.resolve(".noctuary")).hasContent("mine");
    }

    @Test
    void pagesAreReadableByOthers() throws Exception {
        render();
        assertThat(Files.getPosixFilePermissions(root.resolve("output")).toString())
                .contains("OTHERS_READ", "OTHERS_EXECUTE");
    }
}
