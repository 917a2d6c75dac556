package noctuary.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file of the cache, whole or not at all. */
public final class KeptFile {
    private KeptFile() {}

    /** Does nothing where it cannot be written: a cache that is full or read-only costs time only. */
    public static void write(Path place, byte[] content) {
        Path draft = null;
        try {
            Files.createDirectories(place.getParent());
            draft = Files.createTempFile(place.getParent(), "draft", ".tmp");
            Files.write(draft, content);
            Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            forget(draft);
        }
    }

    private static void forget(Path draft) {
        try {
            if (draft != null) {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            return;
        }
    }
}
