package noctuary.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import noctuary.keep.Branches;

/**
 * What notes say beside their words.
 *
 * @param bySlug as in {@link NoteWords#facts}
 * @param leanedOn branches of {@code entries}, or all of it, in which a note from another branch looked for something
 */
public record NoteFacts(Map<String, String> bySlug, Set<Path> leanedOn) {
    static final NoteFacts NONE = new NoteFacts(Map.of(), Set.of());

    static NoteFacts of(List<KeptNote> notes, Path root, Branches looks) {
        Map<String, String> bySlug = new TreeMap<>();
        Set<Path> leanedOn = new TreeSet<>();
        for (KeptNote note : notes) {
            bySlug.put(note.entry().slug(), note.facts());
            Optional<Path> own = looks.branch(root.resolve(note.entry().file()));
            note.branches().keySet().stream()
                    .filter(branch -> !Optional.of(branch).equals(own))
                    .forEach(leanedOn::add);
        }
        return new NoteFacts(bySlug, leanedOn);
    }
}
