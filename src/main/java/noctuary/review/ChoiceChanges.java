package noctuary.review;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import noctuary.entry.Entry;
import noctuary.entry.Slug;

/** Processing choices against their absence: entries with a version made by the choice, and entries with one made without; many are both. */
final class ChoiceChanges {
    private final Chronicle chronicle;

    ChoiceChanges(Chronicle chronicle) {
        this.chronicle = chronicle;
    }

    /** Choices that have both sides. */
    List<Change> all() {
        return names().stream().flatMap(name -> of(name).stream()).toList();
    }

    List<String> names() {
        return chronicle.nights().stream()
                .flatMap(n -> n.sheet().entry().versions().stream())
                .flatMap(v -> v.steps().stream())
                .map(Entry.Step::choice)
                .distinct()
                .sorted()
                .toList();
    }

    /** Empty when no version lacks the choice, or none has it. */
    Optional<Change> of(String choice) {
        Predicate<Entry.Version> has =
                v -> v.steps().stream().anyMatch(s -> s.choice().equals(choice));
        Side without = Side.named("without " + choice, chronicle.where(any(has.negate())));
        Side with = Side.named("with " + choice, chronicle.where(any(has)));
        if (without.nights().isEmpty() || with.nights().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Change(
                "choice-" + Slug.lowerCase(choice),
                ChangeKind.CHOICE,
                Optional.empty(),
                "Versions with " + choice + ", against those without",
                Optional.of(choice),
                without,
                with,
                List.of()));
    }

    /** Entries, at their first night. */
    private static Predicate<EntryNight> any(Predicate<Entry.Version> wanted) {
        return n -> n.first() && n.sheet().entry().versions().stream().anyMatch(wanted);
    }
}
