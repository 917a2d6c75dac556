package noctuary.journal;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Puts files of the cache into a site, and remembers which. Safe for several threads. */
final class Placing {
    private final Path cache;
    private final Path output;
    private final Map<String, String> placed = new ConcurrentHashMap<>();

    Placing(Path cache, Path output) {
        this.cache = cache;
        this.output = output;
    }

    /** @param to from the output folder, with forward slashes */
    void place(Path from, String to) throws IOException {
        SharedFile.place(from, output.resolve(to));
        placed.put(to, cache.relativize(from).toString());
    }

    /**
     * Puts again what was put once, places in the cache by places in the site.
     *
     * @throws IOException also for places outside of both, links on the way included: what is kept may come from elsewhere
     */
    void again(Map<String, String> before) throws IOException {
        Path top = cache.toRealPath();
        Set<Path> inside = new HashSet<>();
        for (Map.Entry<String, String> file : before.entrySet()) {
            Path from = cache.resolve(file.getValue());
            if (inside.add(from.getParent()) && !from.getParent().toRealPath().startsWith(top)
                    || !output.resolve(file.getKey()).normalize().startsWith(output.normalize())) {
                throw new NoSuchFileException(from.toString());
            }
            place(from, file.getKey());
        }
    }

    /** Places in the cache by places in the site. */
    Map<String, String> placed() {
        return new TreeMap<>(placed);
    }
}
