package noctuary.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
 * @param facts stands for all that it says but its body's words, and for what it leans on outside its own branch
 */
record KeptNote(
        Entry entry,
        List<Typed<String>> closes,
        List<Ledger.Noted> notes,
        Map<Path, String> trail,
        Map<Path, String> branches,
        Map<Path, Optional<String>> asked,
        String facts) {
    static final Packing<KeptNote> PACKING = Packing.of(KeptNote.class);

    /** @param own the branch that the note lies in, which is left out of what it leans on; empty when nobody looked */
    static KeptNote of(
            EntryReader.Draft draft, List<Ledger.Noted> notes, Trail trail, Pages asked, Optional<Path> own) {
        Map<Path, String> others = new TreeMap<>(trail.branches());
        own.ifPresent(others::remove);
        KeptNote bare =
                new KeptNote(draft.entry().wordless(), draft.closes(), notes, trail.places(), others, Map.of(), "");
        return new KeptNote(
                draft.entry(),
                draft.closes(),
                notes,
                trail.places(),
                trail.branches(),
                asked.asked(),
                PACKING.digest(bare));
    }

    /** Whether reading the note again would give the same. */
    boolean holds(Branches entries, Map<Path, String> pages) {
        return Pages.same(asked, pages)
                && branches.entrySet().stream()
                        .allMatch(e -> entries.around(e.getKey()).equals(Optional.of(e.getValue())))
                && trail.entrySet().stream().allMatch(e -> Glance.at(e.getKey()).equals(e.getValue()));
    }
}
