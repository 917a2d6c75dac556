package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What else was not the same on both sides, in sentences. */
final class Coincidences {
    private final Chronicle chronicle;
    private final Change change;

    private Coincidences(Chronicle chronicle, Change change) {
        this.chronicle = chronicle;
        this.change = change;
    }

    /** @param others all changes of the journal */
    static List<String> of(Chronicle chronicle, Change change, List<Change> others) {
        if (change.before().nights().isEmpty() || change.after().nights().isEmpty()) {
            return List.of();
        }
        Coincidences all = new Coincidences(chronicle, change);
        List<String> sentences = new ArrayList<>();
        if (change.kind() == ChangeKind.RIG && change.part().isEmpty()) {
            sentences.addAll(RigDifference.between(change));
        } else {
            all.unlike("Rigs", n -> chronicle.rigName(n.rig())).ifPresent(sentences::add);
        }
        if (change.kind() != ChangeKind.SITE) {
            all.unlike("Sites", n -> chronicle.siteName(n.site())).ifPresent(sentences::add);
        }
        all.unlike("Filters", n -> n.filter().isEmpty() ? "none told" : n.filter())
                .ifPresent(sentences::add);
        all.unlike("Files", n -> n.fileCount() == 0 ? "none" : n.stacked() ? "stacks" : "single frames")
                .ifPresent(sentences::add);
        sentences.add(all.targets());
        sentences.add(all.dates());
        sentences.addAll(all.between(others));
        return sentences;
    }

    private Optional<String> unlike(String what, Function<EntryNight, String> key) {
        Set<String> before = values(change.before(), key);
        Set<String> after = values(change.after(), key);
        return before.equals(after)
                ? Optional.empty()
                : Optional.of(what + ": " + said(before) + " before; " + said(after) + " after.");
    }

    private String targets() {
        Set<String> before = values(change.before(), EntryNight::target);
        Set<String> after = values(change.after(), EntryNight::target);
        Set<String> shared = new TreeSet<>(before);
        shared.retainAll(after);
        before.removeAll(shared);
        after.removeAll(shared);
        String both = shared.isEmpty() ? "No target on both sides" : "Targets on both sides: " + said(shared);
        return both
                + (before.isEmpty() ? "" : "; only before: " + said(before))
                + (after.isEmpty() ? "" : "; only after: " + said(after))
                + ".";
    }

    private String dates() {
        return "Nights from " + span(change.before()) + " before, from " + span(change.after()) + " after.";
    }

    private static String span(Side side) {
        List<LocalDate> dates = side.dates();
        return dates.get(0) + " to " + dates.get(dates.size() - 1);
    }

    /**
     * Other changes of rig, site or way after the first night and up to the last, on whose later side some nights of
     * this change lie.
     */
    private List<String> between(List<Change> others) {
        Set<LocalDate> nights = new TreeSet<>(change.before().dates());
        nights.addAll(change.after().dates());
        LocalDate first = ((TreeSet<LocalDate>) nights).first();
        LocalDate last = ((TreeSet<LocalDate>) nights).last();
        Set<String> own = new HashSet<>(change.before().entries());
        own.addAll(change.after().entries());
        return others.stream()
                .filter(c -> !c.id().equals(change.id()))
                .filter(c -> c.date()
                        .filter(d -> d.isAfter(first) && !d.isAfter(last))
                        .isPresent())
                .filter(c -> c.after().nights().stream().map(EntryNight::slug).anyMatch(own::contains))
                .map(c -> "On " + c.date().orElseThrow() + " also: " + c.sentence() + ".")
                .toList();
    }

    private static Set<String> values(Side side, Function<EntryNight, String> key) {
        return side.nights().stream().map(key).filter(v -> !v.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String said(Set<String> values) {
        return values.isEmpty() ? "none" : String.join(", ", values);
    }
}
