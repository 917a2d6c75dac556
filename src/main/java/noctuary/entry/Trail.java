package noctuary.entry;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import noctuary.keep.Glance;

/**
 * Places outside {@code entries} that notes led to, whether or not something was there, and what each looked like before
 * it was looked at. What lies in {@code entries} need not be told one by one: all of it counts.
 */
final class Trail {
    private final Path entries;
    private final Map<Path, String> places = new TreeMap<>();

    /** @param root with symbolic links resolved */
    Trail(Path root) {
        this.entries = root.resolve("entries");
    }

    void pass(Path place) {
        if (!place.startsWith(entries)) {
            places.computeIfAbsent(place, Glance::at);
        }
    }

    Map<Path, String> places() {
        return places;
    }
}
