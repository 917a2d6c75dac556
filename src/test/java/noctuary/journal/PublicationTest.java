package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import noctuary.measure.SmallJournal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PublicationTest {
    @TempDir
    private Path root;

    @BeforeEach
    void journal() {
        new SmallJournal(root).entry("m27", "title: A", "exposure: [{count: 1, seconds: 60}]");
    }

    private void render() throws Exception {
        Rendering.render(root, root.resolve("output"), Progress.SILENT);
    }

    private Stream<String> beside() throws Exception {
        try (Stream<Path> all = Files.list(root)) {
            return all.map(p -> p.getFileName().toString()).toList().stream();
        }
    }

    @Test
    void draftsOfAKilledRenderAreClearedAway() throws Exception {
        render();
        Files.createDirectories(root.resolve(".output-draft-123/entries"));
        Files.writeString(root.resolve(".output-draft-123/entries/half.html"), "half");
        render();
        assertThat(beside()).containsExactlyInAnyOrder("entries", "output", ".noctuary");
    }

    @Test
    void anOldSiteThatLostItsNameGetsItBack() throws Exception {
        render();
        String before = Files.readString(root.resolve("output/index.html"));
        Files.move(root.resolve("output"), root.resolve(".output-draft-123-old"));
        Leftovers.clear(root.resolve("output"));
        assertThat(root.resolve("output/index.html")).hasContent(before);
    }

    @Test
    void rendersAtOnceTakeTurns() throws Exception {
        CompletableFuture<?>[] renders = Stream.generate(() -> CompletableFuture.runAsync(() -> {
                    try {
                        render();
                    } catch (Exception e) {
                        throw new IllegalStateException(e);
                    }
                }))
                .limit(6)
                .toArray(CompletableFuture[]::new);
        CompletableFuture.allOf(renders).join();
        assertThat(root.resolve("output/index.html")).exists();
        assertThat(beside()).containsExactlyInAnyOrder("entries", "output", ".noctuary");
    }
}
