package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import noctuary.entry.Slug;
import noctuary.keep.Digest;
import noctuary.keep.Memo;
import noctuary.keep.Packing;
import noctuary.match.Alignment;
import noctuary.measure.TargetSheet.Attempt;
import noctuary.sky.Catalogue;
import noctuary.stars.Star;

/** Makes the sheets of the targets: attempts on one object, laid on each other by their stars. */
public final class TargetSheets {
    private static final Comparator<EntrySheet> OLDEST_FIRST = Comparator.comparing(
                    (EntrySheet e) -> e.night().value().orElse(LocalDate.MAX))
            .thenComparing(e -> e.entry().slug());

    private TargetSheets() {}

    private record Found(Optional<Alignment> alignment) {
        static final Packing<Found> PACKING = Packing.of(Found.class);
    }

    public static List<TargetSheet> of(List<EntrySheet> entries) {
        return of(entries, Memo.NONE);
    }

    /** Sorted by name; entries without a target are in none. */
    public static List<TargetSheet> of(List<EntrySheet> entries, Memo memo) {
        Map<String, List<EntrySheet>> groups = new TreeMap<>();
        for (EntrySheet entry : entries) {
            entry.target()
                    .value()
                    .ifPresent(name -> groups.computeIfAbsent(Catalogue.canonicalName(name), k -> new ArrayList<>())
                            .add(entry));
        }
        List<TargetSheet> sheets = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        groups.forEach((name, attempts) -> sheets.add(sheet(id(name, ids), name, attempts, memo)));
        return sheets;
    }

    private static TargetSheet sheet(String id, String name, List<EntrySheet> attempts, Memo memo) {
        List<EntrySheet> ordered = attempts.stream().sorted(OLDEST_FIRST).toList();
        EntrySheet reference = ordered.stream()
                .max(Comparator.comparingInt(TargetSheets::count))
                .orElseThrow();
        return new TargetSheet(
                id,
                name,
                reference.entry().slug(),
                ordered.stream().map(e -> attempt(e, reference, memo)).toList());
    }

    private static Attempt attempt(EntrySheet entry, EntrySheet reference, Memo memo) {
        String slug = entry.entry().slug();
        if (entry == reference) {
            int all = count(entry);
            return all == 0
                    ? unmatched(slug)
                    : new Attempt(slug, all, OptionalDouble.of(0), OptionalDouble.of(1), OptionalDouble.of(0), false);
        }
        String key = content(entry).isEmpty() || content(reference).isEmpty()
                ? ""
                : new Digest().text(content(entry)).text(content(reference)).hex();
        Optional<Alignment> found = memo.recall(
                        "alignments",
                        Found.PACKING,
                        key,
                        () -> new Found(Alignment.find(stars(entry), stars(reference))))
                .alignment();
        return found.map(a -> new Attempt(
                        slug,
                        a.matched(),
                        OptionalDouble.of(a.rmsPx()),
                        OptionalDouble.of(a.scale()),
                        OptionalDouble.of(a.rotationDeg()),
                        a.mirrored()))
                .orElseGet(() -> unmatched(slug));
    }

    private static Attempt unmatched(String slug) {
        return new Attempt(slug, 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), false);
    }

    private static String content(EntrySheet entry) {
        return entry.shownFile().map(ShownFile::content).orElse("");
    }

    private static int count(EntrySheet entry) {
        return entry.shownFile().map(ShownFile::stars).orElse(0);
    }

    private static List<Star> stars(EntrySheet entry) {
        return entry.shown().map(FrameSheet::stars).orElse(List.of());
    }

    /** A name that can stand in an address, and that no target before bears. */
    private static String id(String name, Set<String> given) {
        String plain = Slug.lowerCase(name);
        String first = plain.isEmpty() ? "target" : plain;
        String free = first;
        for (int n = 2; !given.add(free); n++) {
            free = first + "-" + n;
        }
        return free;
    }
}
