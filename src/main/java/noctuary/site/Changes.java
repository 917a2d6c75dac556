package noctuary.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import noctuary.entry.RigNote;
import noctuary.measure.RigSheet;

/** Dated changes of rigs: a rig in use for the first time, and parts replaced later. */
final class Changes {
    private Changes() {}

    record Change(LocalDate date, String text, RigSheet rig) {}

    static List<Change> of(SiteContent content) {
        List<Change> changes = new ArrayList<>();
        content.rigs().values().forEach(rig -> changes.addAll(of(rig)));
        changes.sort(Comparator.comparing(Change::date).thenComparing(Change::text));
        return changes;
    }

    static List<Change> of(RigSheet rig) {
        List<Change> changes = new ArrayList<>();
        String name = rig.note().name().value();
        rig.note().from().ifPresent(from -> changes.add(new Change(from, name + " first in use", rig)));
        for (RigSheet.State state : rig.states()
                .subList(Math.min(1, rig.states().size()), rig.states().size())) {
            String parts = newParts(state).stream().map(Changes::named).collect(Collectors.joining(", "));
            changes.add(new Change(state.from(), name + ": " + (parts.isEmpty() ? "part changed" : parts), rig));
        }
        return changes;
    }

    /** Parts that came into the train on the date the state begins. */
    static List<RigNote.Part> newParts(RigSheet.State state) {
        return state.train().stream()
                .filter(part -> part.since().filter(state.from()::equals).isPresent())
                .toList();
    }

    static String named(RigNote.Part part) {
        return part.name()
                + part.length().map(length -> " " + Numerals.of(length.value())).orElse("");
    }
}
