package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.site.Piece;

/**
 * The site before the one that stands. It waits in the cache to become the next one: most of it will be the same, and to
 * make and to delete thousands of files and folders costs more than anything else in a render.
 *
 * @param standing what the files of the site that stands show
 */
record Spare(Path folder, ShownFiles standing) {

    static Spare of(Path root, Path output, ShownFiles standing) {
        Path record = Places.standing(root, output);
        return new Spare(Places.cache(root).resolve("spare").resolve(record.getFileName()), standing);
    }

    /**
     * Puts it in the place of an empty folder, which stays empty when there is none; one that is not as it was left is
     * deleted.
     *
     * @return pieces of it, by name
     */
    Map<String, Piece> takeTo(Path draft) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return Map.of();
        }
        ShownFiles shown = standing.ofSpare();
        Map<String, Piece> pieces = shown.find(Standing.site(folder));
        Files.deleteIfExists(shown.place());
        if (pieces.isEmpty() || !moved(folder, draft)) {
            FolderTree.delete(folder);
            return Map.of();
        }
        forgetDotFiles(draft);
        return pieces;
    }

    /** Takes in the site that stood until now. */
    void keep(Path old) throws IOException {
        Files.createDirectories(folder.getParent());
        if (!moved(standing.place(), standing.ofSpare().place()) || !moved(old, folder)) {
            FolderTree.delete(old);
        }
    }

    /** On one disk only: elsewhere it would be a copy. */
    private static boolean moved(Path from, Path to) {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** These follow the site that stands. */
    private static void forgetDotFiles(Path draft) throws IOException {
        try (Stream<Path> all = Files.list(draft)) {
            for (Path file : all.filter(Publication::isDotFile).toList()) {
                Files.delete(file);
            }
        }
    }
}
