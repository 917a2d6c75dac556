package noctuary.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
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
        Path place = output.resolve(to);
        Files.createDirectories(place.getParent());
        SharedFile.place(from, place);
        placed.put(to, cache.relativize(from).toString());
    }

    /** Puts again what was put once, places in the cache by places in the site. */
    void again(Map<String, String> before) throws IOException {
        for (Map.Entry<String, String> file : before.entrySet()) {
            place(cache.resolve(file.getValue()), file.getKey());
        }
    }

    /** Places in the cache by places in the site. */
    Map<String, String> placed() {
        return new TreeMap<>(placed);
    }
}
