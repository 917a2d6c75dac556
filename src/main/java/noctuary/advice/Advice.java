package noctuary.advice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.Journal;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.NoiseOverTime;
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

    /** @param noise against time by slug, of entries whose frames tell it */
    public static Advice of(
            Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs, Map<String, NoiseOverTime> noise) {
        return of(journal, entries, rigs, noise, Memo.NONE);
    }

    /** @param memo keeps what takes long to work out */
    public static Advice of(
            Journal journal,
            List<EntrySheet> entries,
            Map<String, RigSheet> rigs,
            Map<String, NoiseOverTime> noise,
            Memo memo) {
        List<EntryContext> contexts = entries.parallelStream()
                .map(e -> EntryContext.of(
                        e,
                        journal,
                        rigs,
                        Optional.ofNullable(noise.get(e.entry().slug())),
                        memo))
                .toList();
        Map<String, LimitReport> limits = LimitReports.of(contexts);
        return new Advice(
                limits,
                ExposurePlans.of(contexts),
                RefocusRules.of(contexts),
                RigDesks.of(contexts, rigs),
                LessonBook.of(entries, limits));
    }

    /** What stands out in one entry; nothing for an entry that was not judged. */
    public List<Finding> findings(String slug) {
        LimitReport report = limits.get(slug);
        return report == null ? List.of() : report.findings();
    }
}
