package noctuary.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import noctuary.entry.Typed;

/**
 * Ways of working: what a note says that was changed, from that entry on. Before: earlier nights with the same rig, in
 * the same state, at the same site; after: that night and later ones alike. A line in the first note after a change of
 * rig, part or site is that change in the keeper's words, and no way of its own; nor is a line in the first note of all.
 */
final class WayChanges {
    private final Chronicle chronicle;
    private final Set<String> tellOthers;

    /** @param dated changes of rigs and sites */
    WayChanges(Chronicle chronicle, List<Change> dated) {
        this.chronicle = chronicle;
        this.tellOthers = new HashSet<>();
        dated.forEach(c -> c.after().entries().stream().findFirst().ifPresent(tellOthers::add));
    }

    List<Change> all() {
        List<Change> changes = new ArrayList<>();
        for (EntryNight night : chronicle.nights()) {
            List<Typed<String>> lines = night.sheet().entry().changes();
            boolean own = night.first() && !tellOthers.contains(night.slug());
            for (int i = 0; own && i < lines.size(); i++) {
                String id = "way-" + night.slug() + (i == 0 ? "" : "-" + (i + 1));
                change(id, lines.get(i).value(), night).ifPresent(changes::add);
            }
        }
        return changes;
    }

    private Optional<Change> change(String id, String line, EntryNight first) {
        Predicate<EntryNight> earlier = n -> n.night().isBefore(first.night());
        if (chronicle.nights().stream().noneMatch(earlier)) {
            return Optional.empty();
        }
        Predicate<EntryNight> alike = n -> n.rig().equals(first.rig())
                && n.state().equals(first.state())
                && n.site().equals(first.site());
        return Optional.of(new Change(
                id,
                ChangeKind.WAY,
                Optional.of(first.night()),
                line,
                Optional.empty(),
                Side.named("until then", chronicle.where(alike.and(earlier))),
                Side.named("from then on", chronicle.where(alike.and(earlier.negate()))),
                List.of()));
    }
}
