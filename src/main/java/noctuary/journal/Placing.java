package noctuary.journal;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import noctuary.keep.Digest;
import noctuary.site.Draft;

/** One piece of a site, made of files of the cache, which are put there when all are known. */
final class Placing {
    private final Path cache;
    private final Draft draft;
    private final String name;
    private final SortedMap<String, Path> files = new TreeMap<>();

    /** @param name of the piece */
    Placing(Path cache, Draft draft, String name) {
        this.cache = cache;
        this.draft = draft;
        this.name = name;
    }

    /** @param to from the output folder, with forward slashes */
    void add(Path from, String to) {
        files.put(to, from);
    }

    /**
     * Puts all that was added into the site, unless it has the same already.
     *
     * @param shown stands for all that the files are made from
     */
    void place(String shown) throws IOException {
        List<String> names = List.copyOf(files.keySet());
        if (draft.has(name, shown, names)) {
            return;
        }
        for (Map.Entry<String, Path> file : files.entrySet()) {
            SharedFile.place(file.getValue(), draft.folder().resolve(file.getKey()));
        }
        draft.put(name, shown, names);
    }

    /** As {@link #place(String)}, of files whose places in the cache stand for what they are made from. */
    void place() throws IOException {
        place(shown(placed()));
    }

    /**
     * Puts again what was put once, places in the cache by places in the site.
     *
     * @throws IOException also for places outside of both, links on the way included: what is kept may come from elsewhere
     */
    void again(SortedMap<String, String> before) throws IOException {
        if (draft.has(name, shown(before), List.copyOf(before.keySet()))) {
            return;
        }
        Path top = cache.toRealPath();
        Path site = draft.folder();
        Set<Path> inside = new HashSet<>();
        for (Map.Entry<String, String> file : before.entrySet()) {
            Path from = cache.resolve(file.getValue());
            if (inside.add(from.getParent()) && !from.getParent().toRealPath().startsWith(top)
                    || !site.resolve(file.getKey()).normalize().startsWith(site.normalize())) {
                throw new NoSuchFileException(from.toString());
            }
            add(from, file.getKey());
        }
        place(shown(before));
    }

    /** Places in the cache by places in the site. */
    SortedMap<String, String> placed() {
        SortedMap<String, String> placed = new TreeMap<>();
        files.forEach((to, from) -> placed.put(to, cache.relativize(from).toString()));
        return placed;
    }

    private static String shown(SortedMap<String, String> places) {
        Digest digest = new Digest();
        places.values().forEach(digest::text);
        return digest.hex();
    }
}
