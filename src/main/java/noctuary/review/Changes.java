package noctuary.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds the changes of a journal. */
final class Changes {
    private static final Comparator<Change> BY_DATE =
            Comparator.comparing((Change c) -> c.date().orElse(LocalDate.MAX)).thenComparing(Change::id);

    private Changes() {}

    /** By date; choices, which have none, last. */
    static List<Change> of(Chronicle chronicle) {
        List<Change> dated = new ArrayList<>();
        dated.addAll(new RigChanges(chronicle).all());
        dated.addAll(new SiteChanges(chronicle).all());
        List<Change> all = new ArrayList<>(dated);
        all.addAll(new WayChanges(chronicle, dated).all());
        all.addAll(new ChoiceChanges(chronicle).all());
        return unique(all.stream().sorted(BY_DATE).toList());
    }

    /** Two choices may differ in signs that an address does not hold. */
    private static List<Change> unique(List<Change> changes) {
        Set<String> given = new HashSet<>();
        List<Change> named = new ArrayList<>();
        for (Change change : changes) {
            String id = change.id();
            for (int n = 2; !given.add(id); n++) {
                id = change.id() + "-" + n;
            }
            named.add(change.named(id));
        }
        return named;
    }

    /** What the note of the first night on the later side says that was changed. */
    static List<String> words(List<EntryNight> after) {
        return after.isEmpty()
                ? List.of()
                : after.get(0).sheet().entry().changes().stream()
                        .map(c -> c.value())
                        .toList();
    }
}
