package noctuary.entry;

import java.net.URI;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * {@code entries/journal.yaml}.
 *
 * @param publishedAt where on the web the site is to stand, ending in a slash; absent for a journal that stays at home
 * @param archive name to folder, in the order typed; a path in the settings begins at {@code entries/}
 */
public record Settings(
        String title,
        Optional<String> keeper,
        Optional<String> site,
        Optional<String> rig,
        Optional<URI> publishedAt,
        Map<String, Path> archive,
        Publish publish) {
    public Settings {
        archive = Collections.unmodifiableMap(new LinkedHashMap<>(archive));
    }

    /** What may leave the keeper's machine; all private unless said. */
    public record Publish(boolean coordinates, boolean fileNames) {}
}
