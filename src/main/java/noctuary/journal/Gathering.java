package noctuary.journal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import noctuary.entry.Journal;
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

/**
 * A journal read and measured, before anything is concluded from it.
 *
 * @param memo to be saved by who asked for all of it
 * @param entries newest night first
 * @param noise against time by slug, of entries whose frames tell it
 */
record Gathering(
        Journal journal,
        Memo memo,
        MeasuredFiles files,
        List<EntrySheet> entries,
        Map<String, RigSheet> rigs,
        Map<String, NoiseOverTime> noise,
        List<TargetSheet> targets) {

    private static final Comparator<EntrySheet> NEWEST_FIRST = Comparator.comparing(
                    (EntrySheet e) -> e.night().value().orElse(LocalDate.MIN))
            .reversed()
            .thenComparing(e -> e.entry().slug());

    static Gathering of(Path root, Branches looks, Progress progress) {
        Memo memo = Places.memo(root);
        Journal journal = Journal.read(root, looks, memo);
        MeasuredFiles files = new MeasuredFiles(Places.cache(root));
        List<EntrySheet> entries = new EntrySheets(journal, files::of, memo)
                .all(wanted -> measure(files, wanted, progress)).stream()
                        .sorted(NEWEST_FIRST)
                        .toList();
        return new Gathering(
                journal,
                memo,
                files,
                entries,
                RigSheets.of(journal, entries),
                noise(entries, new NoiseCourses(files, Places.cache(root), memo), progress),
                TargetSheets.of(entries, memo));
    }

    private static void measure(MeasuredFiles files, Collection<Path> wanted, Progress progress) {
        files.measure(wanted, done -> {
            progress.at("measuring", done, wanted.size());
            progress.measured(files.measuredNow());
        });
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
}
