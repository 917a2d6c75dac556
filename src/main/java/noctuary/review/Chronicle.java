package noctuary.review;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import noctuary.entry.Journal;
import noctuary.entry.Site;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;

/**
 * All dated nights of a journal with its rigs and sites.
 *
 * @param nights by date
 */
record Chronicle(Journal journal, Map<String, RigSheet> rigs, List<EntryNight> nights) {
    /** @param memo keeps what nights tell */
    static Chronicle of(Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs, Memo memo) {
        return new Chronicle(journal, rigs, new EntryNights(journal, rigs, memo).of(entries));
    }

    List<EntryNight> where(Predicate<EntryNight> wanted) {
        return nights.stream().filter(wanted).toList();
    }

    List<EntryNight> ofRig(String rig) {
        return where(n -> n.rig().equals(rig));
    }

    List<EntryNight> ofSite(String site) {
        return where(n -> n.site().equals(site));
    }

    /** The last night before a date for which {@code wanted} holds. */
    Optional<EntryNight> lastBefore(LocalDate date, Predicate<EntryNight> wanted) {
        return nights.stream()
                .filter(n -> n.night().isBefore(date))
                .filter(wanted)
                .reduce((earlier, later) -> later);
    }

    String rigName(String id) {
        return Optional.ofNullable(rigs.get(id))
                .map(r -> r.note().name().value())
                .orElse(id);
    }

    String siteName(String id) {
        return Optional.ofNullable(journal.sites().get(id)).map(Site::name).orElse(id);
    }

    /**
     * Both sides at the values that they share, such as the same sites; as they are when they share none.
     *
     * @param key by which nights are alike
     */
    static Sides alike(List<EntryNight> before, List<EntryNight> after, Function<EntryNight, ?> key) {
        Sides shared = shared(before, after, key);
        return shared.before().isEmpty() ? new Sides(before, after) : shared;
    }

    /** As {@link #alike}, but nothing when they share none. */
    static Sides shared(List<EntryNight> before, List<EntryNight> after, Function<EntryNight, ?> key) {
        Set<Object> shared = keys(before, key);
        shared.retainAll(keys(after, key));
        return new Sides(among(before, key, shared), among(after, key, shared));
    }

    record Sides(List<EntryNight> before, List<EntryNight> after) {}

    private static Set<Object> keys(List<EntryNight> nights, Function<EntryNight, ?> key) {
        return nights.stream().map(key).collect(Collectors.toCollection(HashSet::new));
    }

    private static List<EntryNight> among(List<EntryNight> nights, Function<EntryNight, ?> key, Set<Object> wanted) {
        return nights.stream().filter(n -> wanted.contains(key.apply(n))).toList();
    }
}
