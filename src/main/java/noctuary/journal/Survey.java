package noctuary.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import noctuary.advice.Advice;
import noctuary.advice.Finding;
import noctuary.entry.Journal;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import noctuary.keep.Memo;
import noctuary.measure.EntrySheet;
import noctuary.measure.EntrySheets;
import noctuary.measure.MeasuredFiles;
import noctuary.measure.NoiseCourses;
import noctuary.measure.NoiseOverTime;
import noctuary.measure.RigSheet;
import noctuary.measure.RigSheets;
import noctuary.measure.TargetSheet;
import noctuary.measure.TargetSheets;
import noctuary.measure.VersionSheet;
import noctuary.review.Reviews;
import noctuary.rig.Check;

/**
 * A journal read and measured, before anything is written.
 *
 * @param memo to be saved by who asked for all of it
 * @param entries newest night first
 */
record Survey(
        Journal journal,
        Memo memo,
        MeasuredFiles files,
        List<EntrySheet> entries,
        Map<String, RigSheet> rigs,
        List<TargetSheet> targets,
        Advice advice,
        List<Problem> problems) {

    private static final Comparator<EntrySheet> NEWEST_FIRST = Comparator.comparing(
                    (EntrySheet e) -> e.night().value().orElse(LocalDate.MIN))
            .reversed()
            .thenComparing(e -> e.entry().slug());

    static Survey of(Path root, Branches looks, Progress progress) {
        Memo memo = Places.memo(root);
        Journal journal = Journal.read(root, looks, memo);
        MeasuredFiles files = new MeasuredFiles(Places.cache(root));
        List<EntrySheet> entries = new EntrySheets(journal, files::of, memo)
                .all(wanted -> measure(files, wanted, progress)).stream()
                        .sorted(NEWEST_FIRST)
                        .toList();
        Map<String, RigSheet> rigs = RigSheets.of(journal, entries);
        Map<String, NoiseOverTime> noise = noise(entries, new NoiseCourses(files, Places.cache(root), memo), progress);
        Advice advice = Advice.of(journal, entries, rigs, noise, memo);
        return new Survey(
                journal,
                memo,
                files,
                entries,
                rigs,
                TargetSheets.of(entries, memo),
                advice,
                problems(journal, entries, rigs, advice));
    }

    private static void measure(MeasuredFiles files, Collection<Path> wanted, Progress progress) {
        files.measure(wanted, done -> {
            progress.at("measuring", done, wanted.size());
            progress.measured(files.measuredNow());
        });
    }

    /** Worked out anew at each call; not every command wants them. */
    Reviews reviews(Function<EntrySheet, List<VersionSheet>> versions) {
        return Reviews.of(journal, entries, rigs, versions, memo);
    }

    private static Map<String, NoiseOverTime> noise(List<EntrySheet> entries, NoiseCourses courses, Progress progress) {
        Map<String, NoiseOverTime> all = new LinkedHashMap<>();
        int done = 0;
        for (EntrySheet sheet : entries) {
            courses.of(sheet).ifPresent(course -> all.put(sheet.entry().slug(), course));
            progress.at("combining frames", ++done, entries.size());
        }
        return all;
    }

    private static List<Problem> problems(
            Journal journal, List<EntrySheet> entries, Map<String, RigSheet> rigs, Advice advice) {
        List<Problem> problems = new ArrayList<>(journal.problems());
        rigs.values()
                .forEach(rig -> rig.latest().checks().stream()
                        .filter(c -> c.level() != Check.Level.OK)
                        .forEach(c -> problems.add(
                                Problem.notice(rig.note().file(), c.id(), c.text(), "see the rig's page"))));
        advice.desks()
                .forEach((id, desk) -> desk.findings().stream()
                        .filter(Finding::asksForAction)
                        .forEach(f -> problems.add(
                                Problem.notice(rigs.get(id).note().file(), f.id(), f.text(), f.settle()))));
        entries.forEach(e -> problems.addAll(e.problems()));
        return problems;
    }
}
