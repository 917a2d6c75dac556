package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderTreeTest {
    @TempDir
    Path place;

    @Test
    void allOfATreeGoes() throws IOException {
        Path tree = place.resolve("site");
        for (String file : new String[] {"index.html", "entries/a/index.html", "entries/a/tiles/0/0_0.jpg", "x/y.js"}) {
            Files.createDirectories(tree.resolve(file).getParent());
            Files.writeString(tree.resolve(file), file);
        }
        FolderTree.delete(tree);
        assertThat(tree).doesNotExist();
        FolderTree.delete(tree);
    }

    @Test
    void whatLinksLeadToStays() throws IOException {
        Path kept = Files.createDirectories(place.resolve("kept/inner/most"));
        Files.writeString(kept.resolve("file"), "stays");
        Path tree = Files.createDirectories(place.resolve("site/entries"));
        Files.createSymbolicLink(tree.resolve("a"), place.resolve("kept"));
        Files.createSymbolicLink(place.resolve("site/b"), place.resolve("kept"));
        Path link = Files.createSymbolicLink(place.resolve("link"), place.resolve("kept"));
        FolderTree.delete(place.resolve("site"));
        FolderTree.delete(link);
        assertThat(kept.resolve("file")).hasContent("stays");
        assertThat(place.toFile().list()).containsExactly("kept");
    }
}
