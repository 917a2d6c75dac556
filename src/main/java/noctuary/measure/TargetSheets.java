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
import noctuary.keep.Memo;
import noctuary.measure.TargetSheet.Attempt;
import noctuary.sky.Catalogue;

/** Makes the sheets of the targets: attempts on one object, laid on each other by their stars. */
public final class TargetSheets {
    private static final Comparator<EntrySheet> OLDEST_FIRST = Comparator.comparing(
                    (EntrySheet e) -> e.night().value().orElse(LocalDate.MAX))
            .thenComparing(e -> e.entry().slug());

    private TargetSheets() {}

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
        SkyMatches matches = new SkyMatches(memo);
        List<Group> named = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        groups.forEach((name, attempts) -> named.add(new Group(id(name, ids), name, attempts)));
        return named.parallelStream().map(group -> sheet(group, matches)).toList();
    }

    private record Group(String id, String name, List<EntrySheet> attempts) {}

    private static TargetSheet sheet(Group group, SkyMatches matches) {
        List<EntrySheet> ordered =
                group.attempts().stream().sorted(OLDEST_FIRST).toList();
        EntrySheet reference = reference(ordered, matches);
        return new TargetSheet(
                group.id(),
                group.name(),
                reference.entry().slug(),
                ordered.stream().map(e -> attempt(e, reference, matches)).toList());
    }

    /** Of those that show stars; the oldest where none does. */
    private static EntrySheet reference(List<EntrySheet> ordered, SkyMatches matches) {
        List<EntrySheet> candidates = ordered.stream()
                .filter(e -> count(e) > 0)
                .sorted(Comparator.comparingInt(e -> -count(e)))
                .toList();
        return SkyReference.choose(candidates, reference -> (int) candidates.stream()
                        .filter(e ->
                                e != reference && match(e, reference, matches).isPresent())
                        .count())
                .orElse(ordered.get(0));
    }

    private static Attempt attempt(EntrySheet entry, EntrySheet reference, SkyMatches matches) {
        String slug = entry.entry().slug();
        if (entry == reference) {
            int all = count(entry);
            return all == 0
                    ? unmatched(slug)
                    : new Attempt(slug, all, OptionalDouble.of(0), OptionalDouble.of(1), OptionalDouble.of(0), false);
        }
        return match(entry, reference, matches)
                .map(m -> new Attempt(
                        slug,
                        m.matched(),
                        OptionalDouble.of(m.rmsPx()),
                        OptionalDouble.of(m.scale()),
                        OptionalDouble.of(m.rotationDeg()),
                        m.mirrored()))
                .orElseGet(() -> unmatched(slug));
    }

    private static Optional<SkyMatch> match(EntrySheet entry, EntrySheet reference, SkyMatches matches) {
        return count(entry) == 0 || count(reference) == 0
                ? Optional.empty()
                : matches.of(content(entry), () -> measured(entry), content(reference), () -> measured(reference));
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

    private static Measurement measured(EntrySheet entry) {
        return entry.shown().orElseThrow().measurement();
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
