package noctuary.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.keep.Branches;
import noctuary.keep.Glance;
import noctuary.keep.Packing;

/**
 * One note read, with its problems and all that the reading depended on beside the note's own branch and the names of
 * rigs and sites.
 *
 * @param closes lessons that it says it closes, not yet checked
 * @param trail places outside {@code entries}, as they looked
 * @param branches inside {@code entries}, as they looked
 * @param asked places, and the pages that they had
 */
record KeptNote(
        Entry entry,
        List<Typed<String>> closes,
        List<Ledger.Noted> notes,
        Map<Path, String> trail,
        Map<Path, String> branches,
        Map<Path, Optional<String>> asked) {
    static final Packing<KeptNote> PACKING = Packing.of(KeptNote.class);

    /** Whether reading the note again would give the same. */
    boolean holds(Branches entries, Map<Path, String> pages) {
        return Pages.same(asked, pages)
                && branches.entrySet().stream()
                        .allMatch(e -> entries.around(e.getKey()).equals(Optional.of(e.getValue())))
                && trail.entrySet().stream().allMatch(e -> Glance.at(e.getKey()).equals(e.getValue()));
    }
}
