package noctuary.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import noctuary.entry.RigNote;
import noctuary.measure.RigSheet;

/** Dated changes: a rig in use for the first time, parts replaced later, the first night at another site. */
final class Changes {
    private Changes() {}

    /** @param page that tells more */
    record Change(LocalDate date, String text, Address page) {}

    static List<Change> of(SiteContent content) {
        List<Change> changes = new ArrayList<>();
        content.rigs().values().forEach(rig -> changes.addAll(of(rig)));
        changes.addAll(moves(content));
        changes.sort(Comparator.comparing(Change::date).thenComparing(Change::text));
        return changes;
    }

    static List<Change> of(RigSheet rig) {
        List<Change> changes = new ArrayList<>();
        String name = rig.note().name().value();
        rig.note()
                .from()
                .ifPresent(from -> changes.add(new Change(
                        from, name + " first in use", Address.rig(rig.note().id()))));
        for (RigSheet.State state : rig.states()
                .subList(Math.min(1, rig.states().size()), rig.states().size())) {
            String parts = newParts(state).stream().map(Changes::named).collect(Collectors.joining(", "));
            changes.add(new Change(
                    state.from(),
                    name + ": " + (parts.isEmpty() ? "part changed" : parts),
                    Address.rig(rig.note().id())));
        }
        return changes;
    }

    /** The first night at each site but the one where the journal begins. */
    private static List<Change> moves(SiteContent content) {
        Map<String, Change> first = new LinkedHashMap<>();
        content.entries().stream()
                .filter(e -> e.night().value().isPresent())
                .sorted(Comparator.comparing(e -> e.night().value().get()))
                .forEach(e -> e.entry()
                        .site()
                        .map(site -> content.journal().sites().get(site.value()))
                        .ifPresent(site -> first.putIfAbsent(
                                site.id(),
                                new Change(
                                        e.night().value().get(),
                                        site.name() + ", first night",
                                        Address.entry(e.entry().slug())))));
        return first.values().stream().skip(1).toList();
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
