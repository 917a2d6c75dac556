package noctuary.journal;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import noctuary.site.Piece;

/**
 * Puts a finished site in the place of the old one. The new site is written beside the old one and takes its name only
 * when it is whole; a folder that we did not write is never replaced.
 */
final class Publication {
    /** Marks a folder as ours. */
    private static final String MARK = ".noctuary-site";

    private final Path output;
    private final Path draft;
    private final Spare spare;

    private Publication(Path output, Path draft, Spare spare) {
        this.output = output;
        this.draft = draft;
        this.spare = spare;
    }

    /**
     * @param standing record of the site that stands
     * @throws RefusedException when the folder holds something that is not a site of ours, lies among the notes, or
     *     cannot be written
     */
    static Publication begin(Path root, Path output, ShownFiles standing) throws IOException, RefusedException {
        Path place = output.toAbsolutePath().normalize();
        refuseForeign(place);
        refuseNotes(root.resolve("entries"), place);
        try {
            Files.createDirectories(place.getParent());
            Leftovers.clear(place);
            Path draft = Files.createTempDirectory(place.getParent(), Leftovers.draftPrefix(place));
            openToReaders(draft);
            return new Publication(place, draft, Spare.of(root, place, standing));
        } catch (FileSystemException e) {
            throw new RefusedException(
                    place + ": no site can be written there; name another folder with --output, or give yourself"
                            + " permission to write into " + place.getParent());
        }
    }

    /** Where the new site is made. */
    Path draft() {
        return draft;
    }

    /** Puts there what an earlier site has; pieces of it by name. To be asked for once, first of all. */
    Map<String, Piece> earlier() throws IOException {
        return spare.takeTo(draft);
    }

    /** Swaps the draft in and lays the old site aside; when the swap fails, the old site stands again. */
    void publish() throws IOException {
        Files.writeString(draft.resolve(MARK), "written by noctuary; replaced whole at the next render\n");
        Path old = Leftovers.oldSite(draft);
        boolean replaced = Files.exists(output);
        if (replaced) {
            keepDotFiles();
            Files.move(output, old);
        }
        try {
            Files.move(draft, output);
        } catch (IOException e) {
            if (replaced) {
                Files.move(old, output);
            }
            throw e;
        }
        if (replaced) {
            spare.keep(old);
        }
    }

    void abandon() {
        try {
            FolderTree.delete(draft);
        } catch (IOException e) {
            return;
        }
    }

    /** Folders for drafts are made for their owner alone; a site is there to be read. */
    private static void openToReaders(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private void keepDotFiles() throws IOException {
        try (Stream<Path> all = Files.list(output)) {
            for (Path file : all.filter(Publication::isDotFile).toList()) {
                Path copy = draft.resolve(file.getFileName().toString());
                if (!Files.exists(copy)) {
                    Files.copy(file, copy);
                }
            }
        }
    }

    /** Looks through links at the deepest folder that is already there. */
    private static void refuseNotes(Path entries, Path place) throws IOException, RefusedException {
        Path there = place;
        while (!Files.exists(there)) {
            there = there.getParent();
        }
        if (place.startsWith(entries) || there.toRealPath().startsWith(entries.toRealPath())) {
            throw new RefusedException(place + " lies among the notes; name a folder outside entries");
        }
    }

    private static void refuseForeign(Path place) throws IOException, RefusedException {
        if (!Files.exists(place)) {
            return;
        }
        if (!Files.isDirectory(place)) {
            throw new RefusedException(place + " is a file, not a folder");
        }
        try (Stream<Path> all = Files.list(place)) {
            List<Path> inside = all.toList();
            boolean ours =
                    inside.stream().anyMatch(p -> p.getFileName().toString().equals(MARK));
            if (!ours && !inside.stream().allMatch(Publication::isDotFile)) {
                throw new RefusedException(place + " holds files that noctuary did not write; name an empty folder");
            }
        }
    }

    static boolean isDotFile(Path path) {
        return path.getFileName().toString().startsWith(".") && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
    }
}
