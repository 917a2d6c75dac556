package noctuary.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;

/** Collects the lessons of a journal, who closed them, and where the trouble returned. */
final class LessonBook {
    private final List<EntrySheet> byNight;
    private final Map<String, LimitReport> limits;

    private LessonBook(List<EntrySheet> entries, Map<String, LimitReport> limits) {
        this.limits = limits;
        this.byNight = entries.stream()
                .sorted(Comparator.comparing(LessonBook::night)
                        .thenComparing(e -> e.entry().slug()))
                .toList();
    }

    /** Newest first. */
    static List<LessonState> of(List<EntrySheet> entries, Map<String, LimitReport> limits) {
        return new LessonBook(entries, limits).lessons();
    }

    private List<LessonState> lessons() {
        Map<String, String> closedBy = new HashMap<>();
        byNight.forEach(e -> e.entry()
                .closes()
                .forEach(id -> closedBy.putIfAbsent(id, e.entry().slug())));
        List<LessonState> lessons = new ArrayList<>();
        for (int i = byNight.size() - 1; i >= 0; i--) {
            EntrySheet opener = byNight.get(i);
            opener.entry().lessons().forEach(lesson -> lessons.add(state(lesson, opener, closedBy.get(lesson.id()))));
        }
        return lessons;
    }

    private LessonState state(Entry.Lesson lesson, EntrySheet opener, String closer) {
        List<EntrySheet> again = seenAgain(lesson.about(), opener);
        LocalDate closed = byNight.stream()
                .filter(e -> e.entry().slug().equals(closer))
                .map(LessonBook::night)
                .findFirst()
                .orElse(LocalDate.MAX);
        return new LessonState(
                lesson.id(),
                lesson.about(),
                lesson.todo(),
                opener.entry().slug(),
                Optional.ofNullable(closer),
                again.stream().map(e -> e.entry().slug()).toList(),
                again.stream().anyMatch(e -> night(e).isAfter(closed)));
    }

    private List<EntrySheet> seenAgain(String about, EntrySheet opener) {
        return byNight.stream()
                .filter(e -> e.night().value().isPresent() && night(e).isAfter(night(opener)))
                .filter(e -> returned(about, e))
                .toList();
    }

    private boolean returned(String about, EntrySheet e) {
        boolean lost = e.entry().lost().stream().anyMatch(l -> Cause.same(about, l.cause()));
        boolean learnt = e.entry().lessons().stream().anyMatch(l -> Cause.same(about, l.about()));
        boolean seen = e.observations().stream().anyMatch(o -> Cause.shows(o.id(), about));
        LimitReport report = limits.get(e.entry().slug());
        boolean limited = report != null && report.findings().stream().anyMatch(f -> Cause.shows(f.id(), about));
        return lost || learnt || seen || limited;
    }

    private static LocalDate night(EntrySheet sheet) {
        return sheet.night().value().orElse(LocalDate.MIN);
    }
}
