package noctuary.site;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import noctuary.keep.Digest;

/**
 * A site that is being made, out of nothing or out of an earlier one: pieces of that which show the same stay, the others
 * are replaced or cleared away. No file is ever opened for writing again, because it may be one of the standing site too.
 * Safe for several threads, each with pieces of its own.
 */
public final class Draft {
    private final Path folder;
    private final Map<String, Piece> before;
    private final Former standing;
    private final Map<String, Piece> now = new ConcurrentHashMap<>();

    private Draft(Path folder, Map<String, Piece> before, Former standing) {
        this.folder = folder;
        this.before = before;
        this.standing = standing;
    }

    /** In an empty folder. */
    public static Draft in(Path folder) {
        return new Draft(folder, Map.of(), Former.none());
    }

    /**
     * @param before all that is in the folder, by name
     * @param standing from which single files are taken over
     */
    public static Draft of(Path folder, Map<String, Piece> before, Former standing) {
        return new Draft(folder, before, standing);
    }

    public Path folder() {
        return folder;
    }

    /** Whether the folder has that piece, showing the same; it then stays. */
    public boolean has(String name, String shown, List<String> files) {
        Piece piece = before.get(name);
        if (piece == null || !piece.shows(shown) || !piece.files().equals(files)) {
            return false;
        }
        now.put(name, piece);
        return true;
    }

    /** Whether the file is there, or could be taken over from the standing site, showing the same. */
    public boolean take(String path, String shown) throws IOException {
        if (has(path, shown, List.of(path))) {
            return true;
        }
        if (!standing.has(path, shown)) {
            return false;
        }
        giveWay(path);
        if (!standing.take(path, folder)) {
            return false;
        }
        put(path, shown, List.of(path));
        return true;
    }

    /**
     * Takes over the pieces of the standing site, except for those files.
     *
     * @return whether all could be had
     */
    boolean carry(Set<String> except) throws IOException {
        for (Map.Entry<String, Piece> each : standing.pieces().entrySet()) {
            if (!except.contains(each.getKey()) && !carried(each.getKey(), each.getValue())) {
                return false;
            }
        }
        return true;
    }

    private boolean carried(String name, Piece piece) throws IOException {
        if (has(name, piece.shown(), piece.files())) {
            return true;
        }
        for (String path : piece.files()) {
            Files.deleteIfExists(folder.resolve(path));
            if (!standing.take(path, folder)) {
                return false;
            }
        }
        put(name, piece.shown(), piece.files());
        return true;
    }

    /** Puts a copy into the folder as a file of its own. */
    public void copy(String path, String shown, Path from) throws IOException {
        giveWay(path);
        Path to = folder.resolve(path);
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
        put(path, shown, List.of(path));
    }

    /** Says that a piece was put into the folder. */
    public void put(String name, String shown, List<String> files) {
        now.put(name, new Piece(shown, files));
    }

    /** Puts a file that shows nothing but its bytes, unless it is there. */
    void put(String path, byte[] bytes) throws IOException {
        String shown = new Digest().bytes(bytes).hex();
        if (!take(path, shown)) {
            write(path, shown, ByteBuffer.wrap(bytes));
        }
    }

    /** Puts a file of its own into the folder. */
    public void write(String path, String shown, ByteBuffer bytes) throws IOException {
        Path file = folder.resolve(path);
        if (!file.normalize().startsWith(folder.normalize())) {
            throw new IOException(path + " leads out of the output folder");
        }
        FreshFile.put(file, bytes);
        put(path, shown, List.of(path));
    }

    /** Clears away what is nothing of the new site. */
    public void clear() throws IOException {
        Set<String> stale = new HashSet<>();
        before.forEach((name, piece) -> {
            if (now.get(name) != piece) {
                stale.addAll(piece.files());
            }
        });
        if (!stale.isEmpty()) {
            now.values().forEach(piece -> piece.files().forEach(stale::remove));
        }
        for (String path : stale) {
            FreshFile.delete(folder.resolve(path), folder);
        }
    }

    /** All that is in the folder, by name. */
    public Map<String, Piece> pieces() {
        return new TreeMap<>(now);
    }

    private void giveWay(String path) throws IOException {
        if (before.containsKey(path)) {
            Files.deleteIfExists(folder.resolve(path));
        }
    }
}
