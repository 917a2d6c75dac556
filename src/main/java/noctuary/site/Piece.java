package noctuary.site;

import java.nio.file.Path;
import java.util.List;

/**
 * Files that are made from the same and go together.
 *
 * @param shown stands for all that they are made from; empty when that cannot be told
 * @param files by path from the top folder, with forward slashes; never out of it, wherever a record of them comes from
 */
public record Piece(String shown, List<String> files) {
    public Piece {
        files = List.copyOf(files);
        files.forEach(Piece::refuseOutside);
    }

    private static void refuseOutside(String file) {
        Path path = Path.of(file);
        if (path.isAbsolute() || path.startsWith("..") || !path.normalize().equals(path)) {
            throw new IllegalArgumentException(file + " leads out of the site");
        }
    }

    boolean shows(String that) {
        return !that.isEmpty() && that.equals(shown);
    }
}
