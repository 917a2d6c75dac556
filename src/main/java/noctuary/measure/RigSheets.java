package noctuary.measure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import noctuary.entry.Journal;
import noctuary.entry.RigNote;
import noctuary.measure.RigSheet.State;

/** Makes the sheets of the rigs. */
public final class RigSheets {
    private RigSheets() {}

    /** By id, in the journal's order. */
    public static Map<String, RigSheet> of(Journal journal, List<EntrySheet> entries) {
        Map<String, RigSheet> sheets = new LinkedHashMap<>();
        journal.rigs().forEach((id, note) -> sheets.put(id, new RigSheet(note, states(note), slugs(id, entries))));
        return sheets;
    }

    private static List<State> states(RigNote note) {
        List<LocalDate> dates = new ArrayList<>(note.partChanges());
        LocalDate first = note.from().orElse(LocalDate.MIN);
        if (dates.isEmpty() || first.isBefore(dates.get(0))) {
            dates.add(0, first);
        }
        return dates.stream().map(date -> state(note, date)).toList();
    }

    private static State state(RigNote note, LocalDate date) {
        RigContext context = RigContext.on(note, date);
        return new State(
                date,
                note.trainOn(date),
                context.figures(),
                RigFacts.on(note, date, context),
                context.figures().checks());
    }

    private static List<String> slugs(String id, List<EntrySheet> entries) {
        return entries.stream()
                .filter(e -> e.entry().rig().filter(r -> r.value().equals(id)).isPresent())
                .sorted(Comparator.comparing(e -> e.night().value().orElse(LocalDate.MAX)))
                .map(e -> e.entry().slug())
                .toList();
    }
}
