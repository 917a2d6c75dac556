package noctuary.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The site that stands: a file of it is taken over when all that it shows is as it was. It becomes a file of both sites,
 * where the disk can do that, and is copied where it cannot. Safe for several threads.
 */
public final class Former {
    private final Optional<Path> folder;
    private final Map<String, String> before;
    private final Map<String, String> now = new ConcurrentHashMap<>();

    private Former(Optional<Path> folder, Map<String, String> before) {
        this.folder = folder;
        this.before = before;
    }

    /** There is none, or it is not as it was left. */
    public static Former none() {
        return new Former(Optional.empty(), Map.of());
    }

    /**
     * @param folder of the site, as it was left
     * @param shown what its files show, by path
     */
    public static Former at(Path folder, Map<String, String> shown) {
        return new Former(Optional.of(folder), shown);
    }

    /**
     * Puts the former file into the new site, if it shows the same.
     *
     * @param path from the top folder, with forward slashes
     * @param shown stands for all that the file is made from; empty when that cannot be told
     */
    public boolean take(String path, String shown, Path site) {
        if (shown.isEmpty()) {
            return false;
        }
        now.put(path, shown);
        return folder.isPresent()
                && shown.equals(before.get(path))
                && taken(folder.get().resolve(path), site.resolve(path));
    }

    /** What the files of the new site show, by path. */
    public Map<String, String> shown() {
        return new TreeMap<>(now);
    }

    private static boolean taken(Path from, Path to) {
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
