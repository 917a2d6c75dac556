package noctuary.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import noctuary.site.Abreast;

/** A folder with all that is in it. */
final class FolderTree {
    private FolderTree() {}

    /**
     * Links are deleted, never followed; what is gone already is no fault. A site of years is thousands of folders in a
     * few, and taking one away is mostly waiting for the disk: so they go on all cores.
     */
    static void delete(Path folder) throws IOException {
        List<Abreast.Job> jobs = new ArrayList<>();
        for (Path part : foldersIn(folder)) {
            foldersIn(part).forEach(inner -> jobs.add(() -> deleteOne(inner)));
        }
        Abreast.run(jobs);
        deleteOne(folder);
    }

    /** Real ones, of a real one. */
    private static List<Path> foldersIn(Path folder) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(place -> Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS))
                    .toList();
        } catch (IOException | UncheckedIOException goneOrUnreadable) {
            return List.of();
        }
    }

    private static void deleteOne(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                if (e instanceof NoSuchFileException) {
                    return FileVisitResult.CONTINUE;
                }
                throw e;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
                Files.delete(dir);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
