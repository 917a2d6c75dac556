package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;

/** Puts single files into a site that stands. All are written beside it first, then each takes its place whole. */
final class Amendment {
    private Amendment() {}

    /**
     * @param files by path from the top folder, in the order in which they are put there
     * @throws IOException when they cannot be written, as on a full disk; the site then stands as it was
     */
    static void make(Path output, Map<String, byte[]> files) throws IOException {
        Path place = output.toAbsolutePath().normalize();
        Path draft = Files.createTempDirectory(place.getParent(), Leftovers.draftPrefix(place));
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path there = draft.resolve(file.getKey());
                Files.createDirectories(there.getParent());
                Files.write(there, file.getValue());
            }
            for (String path : files.keySet()) {
                Files.move(
                        draft.resolve(path),
                        place.resolve(path),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            FolderTree.delete(draft);
        }
    }
}
