package noctuary.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SharedFileTest {
    @TempDir
    Path folder;

    @Test
    void aSiteKeepsItsFileWhenTheCacheGetsAnother() throws Exception {
        Path cached = folder.resolve("cached.jpg");
        Path site = folder.resolve("site.jpg");
        SharedFile.write(cached, new byte[] {1});
        SharedFile.place(cached, site);
        assertThat(Files.isSameFile(cached, site)).isTrue();
        SharedFile.write(cached, new byte[] {2, 3});
        assertThat(site).hasBinaryContent(new byte[] {1});
        assertThat(cached).hasBinaryContent(new byte[] {2, 3});
    }

    @Test
    void whatLiesThereGivesWay() throws Exception {
        Path cached = folder.resolve("cached.jpg");
        Path site = folder.resolve("site.jpg");
        Path former = folder.resolve("former.jpg");
        SharedFile.write(site, new byte[] {9, 9});
        SharedFile.place(site, former);
        SharedFile.write(cached, new byte[] {1});
        SharedFile.place(cached, site);
        assertThat(site).hasBinaryContent(new byte[] {1});
        assertThat(former).hasBinaryContent(new byte[] {9, 9});
    }
}
