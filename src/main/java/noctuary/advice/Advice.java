package noctuary.advice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import noctuary.entry.Journal;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;

/**
 * All the advice for a journal.
 *
 * @param limits what limits each entry, by slug
 * @param plans what exposure each entry still wants, by slug; entries without exposure have none
 * @param refocus when to refocus, by rig
 * @param desks what the nights say of each rig, by rig
 * @param lessons newest first
 */
public record Advice(
        Map<String, LimitReport> limits,
        Map<String, ExposurePlan> plans,
        Map<String, RefocusRule> refocus,
        Map<String, RigDesk> desks,
        List<LessonState> lessons) {
    public Advice {
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        plans = Collections.unmodifiableMap(new LinkedHashMap<>(plans));
        refocus = Collections.unmodifiableMap(new LinkedHashMap<>(refocus));
        desks = Collections.unmodifiableMap(new LinkedHashMap<>(desks));
        lessons = List.copyOf(lessons);
    }

    public static Advice of(Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs) {
        return of(journal, entries, rigs, Memo.NONE);
    }

    /** @param memo keeps what takes long to work out */
    public static Advice of(Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs, Memo memo) {
        List<EntryContext> contexts = contexts(journal, entries, rigs);
        Map<String, LimitReport> limits = LimitReports.of(contexts);
        return new Advice(
                limits,
                ExposurePlans.of(contexts, memo),
                RefocusRules.of(contexts),
                RigDesks.of(contexts, rigs),
                LessonBook.of(entries, limits));
    }

    private static List<EntryContext> contexts(Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs) {
        return entries.stream().map(e -> EntryContext.of(e, journal, rigs)).toList();
    }

    /** What stands out in one entry; nothing for an entry that was not judged. */
    public List<Finding> findings(String slug) {
        LimitReport report = limits.get(slug);
        return report == null ? List.of() : report.findings();
    }
}
