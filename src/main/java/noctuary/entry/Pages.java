package noctuary.entry;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The pages that notes have, and for which places one note asked. */
final class Pages {
    private final Map<Path, String> all;
    private final Map<Path, Optional<String>> asked = new TreeMap<>();

    /** @param all from the site's top folder, by the note's path and, for entries, its folder's */
    Pages(Map<Path, String> all) {
        this.all = all;
    }

    Optional<String> at(Path place) {
        return asked.computeIfAbsent(place, p -> Optional.ofNullable(all.get(p)));
    }

    Map<Path, Optional<String>> asked() {
        return asked;
    }

    /** Whether all that was asked would be answered the same again. */
    static boolean same(Map<Path, Optional<String>> asked, Map<Path, String> now) {
        return asked.entrySet().stream().allMatch(e -> e.getValue().equals(Optional.ofNullable(now.get(e.getKey()))));
    }
}
