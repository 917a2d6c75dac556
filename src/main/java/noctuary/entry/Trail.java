package noctuary.entry;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import noctuary.keep.Branches;
import noctuary.keep.Glance;

/**
 * Places that one note led to, whether or not something was there, and what each looked like before it was looked at.
 * What lies in {@code entries} counts by the branch that holds it.
 */
final class Trail {
    private final Branches entries;
    private final Map<Path, String> places = new TreeMap<>();
    private final Map<Path, String> branches = new TreeMap<>();

    /** @param entries what the folder of the notes looked like before they were read, or unknown */
    Trail(Branches entries) {
        this.entries = entries;
    }

    void pass(Path place) {
        entries.branch(place)
                .ifPresentOrElse(
                        branch -> entries.around(branch).ifPresent(seen -> branches.put(branch, seen)),
                        () -> places.computeIfAbsent(place, Glance::at));
    }

    /** Outside {@code entries}. */
    Map<Path, String> places() {
        return places;
    }

    /** Inside {@code entries}: what stands directly in it, or it itself. */
    Map<Path, String> branches() {
        return branches;
    }
}
