package noctuary.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The site that stands: a file of it is taken over when all that it shows is as it was. It becomes a file of both sites,
 * where the disk can do that, and is copied where it cannot.
 */
public final class Former {
    private final Optional<Path> folder;
    private final Map<String, Piece> pieces;

    private Former(Optional<Path> folder, Map<String, Piece> pieces) {
        this.folder = folder;
        this.pieces = pieces;
    }

    /** There is none, or it is not as it was left. */
    public static Former none() {
        return new Former(Optional.empty(), Map.of());
    }

    /** @param folder of the site, as it was left, with these pieces */
    public static Former at(Path folder, Map<String, Piece> pieces) {
        return new Former(Optional.of(folder), pieces);
    }

    /** By name. */
    Map<String, Piece> pieces() {
        return pieces;
    }

    /** Whether a file of its own shows that. */
    boolean has(String path, String shown) {
        Piece piece = pieces.get(path);
        return folder.isPresent() && piece != null && piece.shows(shown);
    }

    /**
     * Puts a file of it into the new site, where nothing has its name.
     *
     * @param path from the top folder, with forward slashes
     */
    boolean take(String path, Path site) {
        Path from = folder.orElseThrow().resolve(path);
        Path to = site.resolve(path);
        return linked(from, to) || hasFolder(to) && (linked(from, to) || copied(from, to));
    }

    private static boolean linked(Path from, Path to) {
        try {
            Files.createLink(to, from);
            return true;
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }

    private static boolean hasFolder(Path to) {
        try {
            Files.createDirectories(to.getParent());
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean copied(Path from, Path to) {
        try {
            Files.copy(from, to);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
