package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import noctuary.entry.RigNote;
import noctuary.measure.RigSheet;
import noctuary.review.Chronicle.Sides;

/**
 * Rigs that came into use after another, and parts that changed within a rig.
 *
 * <p>Before a new rig: the nights with the rig that was used last, its parts as they were last. After it: the nights
 * with the new rig, its parts as they were first. Both at the sites that they share, when they share any. Before and
 * after a part: the nights of the two states that its date divides, in the same manner.
 */
final class RigChanges {
    private final Chronicle chronicle;

    RigChanges(Chronicle chronicle) {
        this.chronicle = chronicle;
    }

    List<Change> all() {
        List<Change> changes = new ArrayList<>();
        for (RigSheet rig : chronicle.rigs().values()) {
            newRig(rig).ifPresent(changes::add);
            for (int i = 1; i < rig.states().size(); i++) {
                newPart(rig, rig.states().get(i - 1), rig.states().get(i)).ifPresent(changes::add);
            }
        }
        return changes;
    }

    private Optional<Change> newRig(RigSheet rig) {
        String id = rig.note().id();
        List<EntryNight> used = chronicle.ofRig(id);
        Optional<LocalDate> begins = used.stream()
                .map(EntryNight::night)
                .findFirst()
                .or(() -> rig.note().from());
        return begins.flatMap(first -> chronicle
                .lastBefore(first, n -> !n.rig().isEmpty() && !n.rig().equals(id))
                .map(last -> newRig(rig, used, first, last)));
    }

    private Change newRig(RigSheet rig, List<EntryNight> used, LocalDate first, EntryNight last) {
        List<EntryNight> before =
                chronicle.where(n -> n.rig().equals(last.rig()) && n.state().equals(last.state()));
        List<EntryNight> after =
                used.stream().filter(n -> n.state().equals(used.get(0).state())).toList();
        LocalDate date = rig.note()
                .from()
                .filter(from -> from.isAfter(last.night()) && !from.isAfter(first))
                .orElse(first);
        String name = rig.note().name().value();
        return change(
                "rig-" + rig.note().id(),
                date,
                name + " instead of " + chronicle.rigName(last.rig()),
                Optional.empty(),
                Chronicle.alike(before, after, EntryNight::site),
                new Name(last.rig(), chronicle.rigName(last.rig())),
                new Name(rig.note().id(), name));
    }

    private Optional<Change> newPart(RigSheet rig, RigSheet.State earlier, RigSheet.State later) {
        List<EntryNight> used = chronicle.ofRig(rig.note().id());
        List<EntryNight> before = in(used, earlier);
        List<EntryNight> after = in(used, later);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Swap swap = Swap.of(earlier, later);
        return Optional.of(change(
                "rig-" + rig.note().id() + "-" + later.from(),
                later.from(),
                rig.note().name().value() + ": " + swap.sentence(),
                Optional.of(swap.part()),
                Chronicle.alike(before, after, EntryNight::site),
                new Name(swap.before(), swap.before()),
                new Name(swap.after(), swap.after())));
    }

    private static List<EntryNight> in(List<EntryNight> nights, RigSheet.State state) {
        return nights.stream()
                .filter(n -> n.state().filter(state::equals).isPresent())
                .toList();
    }

    private static Change change(
            String id, LocalDate date, String sentence, Optional<String> part, Sides sides, Name before, Name after) {
        return new Change(
                id,
                ChangeKind.RIG,
                Optional.of(date),
                sentence,
                part,
                new Side(before.id(), before.name(), sides.before()),
                new Side(after.id(), after.name(), sides.after()),
                Changes.words(sides.after()));
    }

    private record Name(String id, String name) {}

    /** The parts that a date brought, against those they replaced. */
    private record Swap(String part, String before, String after) {
        static Swap of(RigSheet.State earlier, RigSheet.State later) {
            List<RigNote.Part> fresh = Parts.fresh(later);
            List<RigNote.Part> gone = fresh.stream()
                    .flatMap(p ->
                            earlier.train().stream().filter(old -> old.name().equals(p.name())))
                    .toList();
            String parts = fresh.stream().map(RigNote.Part::name).collect(Collectors.joining(", "));
            return new Swap(
                    parts.isEmpty() ? "load" : parts,
                    gone.isEmpty() ? "before " + later.from() : named(gone),
                    fresh.isEmpty() ? "from " + later.from() : named(fresh));
        }

        String sentence() {
            return before.startsWith("before ") ? after + ", new" : after + " instead of " + before;
        }

        private static String named(List<RigNote.Part> parts) {
            return parts.stream().map(Parts::named).collect(Collectors.joining(", "));
        }
    }
}
