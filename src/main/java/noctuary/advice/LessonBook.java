package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;

/** Collects the lessons of a journal, who closed them, and where the trouble returned. */
final class LessonBook {
    private final List<EntrySheet> byNight;
    private final Map<String, LimitReport> limits;

    /** Entries in which a trouble showed, by its word, in the order of their nights. */
    private final Map<String, List<EntrySheet>> byTrouble = new HashMap<>();

    private LessonBook(List<EntrySheet> entries, Map<String, LimitReport> limits) {
        this.limits = limits;
        this.byNight = entries.stream()
                .sorted(Comparator.comparing(LessonBook::night)
                        .thenComparing(e -> e.entry().slug()))
                .toList();
        byNight.forEach(e -> troubles(e)
                .forEach(word ->
                        byTrouble.computeIfAbsent(word, w -> new ArrayList<>()).add(e)));
    }

    /** Newest first. */
    static List<LessonState> of(List<EntrySheet> entries, Map<String, LimitReport> limits) {
        return new LessonBook(entries, limits).lessons();
    }

    private List<LessonState> lessons() {
        Map<String, EntrySheet> closedBy = new HashMap<>();
        byNight.forEach(e -> e.entry().closes().forEach(id -> closedBy.putIfAbsent(id, e)));
        List<LessonState> lessons = new ArrayList<>();
        for (int i = byNight.size() - 1; i >= 0; i--) {
            EntrySheet opener = byNight.get(i);
            opener.entry().lessons().forEach(lesson -> lessons.add(state(lesson, opener, closedBy.get(lesson.id()))));
        }
        return lessons;
    }

    /** @param closer null where none says so */
    private LessonState state(Entry.Lesson lesson, EntrySheet opener, EntrySheet closer) {
        List<EntrySheet> again = seenAgain(lesson.about(), opener);
        LocalDate closed = closer == null ? LocalDate.MAX : night(closer);
        return new LessonState(
                lesson.id(),
                lesson.about(),
                lesson.todo(),
                opener.entry().slug(),
                Optional.ofNullable(closer).map(e -> e.entry().slug()),
                again.stream().map(e -> e.entry().slug()).toList(),
                again.stream().anyMatch(e -> night(e).isAfter(closed)));
    }

    private List<EntrySheet> seenAgain(String about, EntrySheet opener) {
        return byTrouble.getOrDefault(Cause.plain(about), List.of()).stream()
                .filter(e -> e.night().value().isPresent() && night(e).isAfter(night(opener)))
                .toList();
    }

    /** Words for all that went wrong: said by its keeper, seen in its frames, found by its numbers. */
    private Set<String> troubles(EntrySheet e) {
        Set<String> words = new HashSet<>();
        e.entry().lost().forEach(lost -> words.add(Cause.plain(lost.cause())));
        e.entry().lessons().forEach(lesson -> words.add(Cause.plain(lesson.about())));
        e.observations().forEach(seen -> words.addAll(Cause.words(seen.id())));
        LimitReport report = limits.get(e.entry().slug());
        if (report != null) {
            report.findings().forEach(finding -> words.addAll(Cause.words(finding.id())));
        }
        return words;
    }

    private static LocalDate night(EntrySheet sheet) {
        return sheet.night().value().orElse(LocalDate.MIN);
    }
}
