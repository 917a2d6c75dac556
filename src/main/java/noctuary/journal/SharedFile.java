package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * A file of the cache that is a file of sites too, where the disk can do that, so that nothing is copied. It is never
 * opened for writing again: another takes its name.
 */
final class SharedFile {
    private static final long MOST_BYTES = 1 << 26;

    private SharedFile() {}

    static void write(Path place, byte[] content) throws IOException {
        Files.deleteIfExists(place);
        Files.write(place, content);
    }

    /**
     * Puts it where nothing lies yet, or another of its name; never what a link leads to, because a journal from elsewhere
     * brings its own cache and could name any file of this machine in it, nor what is larger than any picture ever kept.
     */
    static void place(Path from, Path to) throws IOException {
        BasicFileAttributes is = Files.readAttributes(from, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (!is.isRegularFile() || is.size() > MOST_BYTES) {
            throw new NoSuchFileException(from.toString());
        }
        try {
            Files.createLink(to, from);
        } catch (IOException | UnsupportedOperationException folderMissingOrPlaceTaken) {
            Files.createDirectories(to.getParent());
            replace(from, to);
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.deleteIfExists(to);
            Files.createLink(to, from);
        } catch (IOException | UnsupportedOperationException e) {
            Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
