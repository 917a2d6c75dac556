package noctuary.journal;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/**
 * What notes, rigs, frames beside them and own templates look like from outside: size and time of every file. Asking
 * again and again works on network folders too, where systems do not tell of changes.
 */
record NoteStamps(Map<Path, String> files) {
    static NoteStamps of(Path root) {
        Map<Path, String> files = new TreeMap<>();
        collect(root.resolve("entries"), files);
        collect(Places.ownTemplates(root), files);
        return new NoteStamps(files);
    }

    private static void collect(Path folder, Map<Path, String> files) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes a) {
                    files.put(file, a.size() + " " + a.lastModifiedTime());
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException goneOrUnreadable) {
                    files.put(file, "unreadable");
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            files.put(folder, "unreadable");
        }
    }
}
