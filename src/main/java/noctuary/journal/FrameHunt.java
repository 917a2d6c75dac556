package noctuary.journal;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Frames where the keeper pointed: a file is taken as it is, a folder is searched, hidden files and links are not. */
final class FrameHunt {
    private static final Pattern FRAME =
            Pattern.compile(".+\\.(fits?|fts)(\\.(fz|gz))?|.+\\.fz", Pattern.CASE_INSENSITIVE);

    private FrameHunt() {}

    /** In the order given, each once, those of a folder by path. */
    static List<Path> find(Collection<Path> places) throws IOException, RefusedException {
        Set<Path> found = new LinkedHashSet<>();
        for (Path place : places) {
            Path whole = place.toAbsolutePath().normalize();
            if (Files.isDirectory(whole)) {
                found.addAll(within(whole, place));
            } else if (Files.isRegularFile(whole)) {
                found.add(whole);
            } else {
                throw new RefusedException(place + " does not exist");
            }
        }
        return List.copyOf(found);
    }

    private static List<Path> within(Path folder, Path asGiven) throws IOException, RefusedException {
        List<Path> frames = new ArrayList<>();
        Files.walkFileTree(folder, new Visitor(folder, frames));
        if (frames.isEmpty()) {
            throw new RefusedException(
                    asGiven + " holds no FITS file (*.fits, *.fit, *.fts, also packed as .fz or .gz)");
        }
        return frames.stream().sorted().toList();
    }

    private static final class Visitor extends SimpleFileVisitor<Path> {
        private final Path start;
        private final List<Path> frames;

        Visitor(Path start, List<Path> frames) {
            this.start = start;
            this.frames = frames;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            return hidden(folder) && !folder.equals(start) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (attributes.isRegularFile()
                    && !hidden(file)
                    && FRAME.matcher(file.getFileName().toString()).matches()) {
                frames.add(file);
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
            return FileVisitResult.CONTINUE;
        }

        private static boolean hidden(Path path) {
            return path.getFileName() != null && path.getFileName().toString().startsWith(".");
        }
    }
}
