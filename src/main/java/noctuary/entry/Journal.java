package noctuary.entry;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.fact.Problem;

/**
 * All that the keeper wrote, and everything wrong with it.
 *
 * @param root the journal's folder, with symbolic links resolved
 * @param rigs by id, in order of the date from which they are in use, undated ones last
 * @param entries sorted by slug
 * @param problems by file and line
 * @param trail places outside {@code entries} that notes led to, with the {@link noctuary.keep.Glance} taken before each
 *     was looked at
 */
public record Journal(
        Path root,
        Settings settings,
        Map<String, RigNote> rigs,
        Map<String, Site> sites,
        List<Entry> entries,
        List<Problem> problems,
        Map<Path, String> trail) {
    public Journal {
        rigs = Collections.unmodifiableMap(new LinkedHashMap<>(rigs));
        sites = Collections.unmodifiableMap(new LinkedHashMap<>(sites));
        entries = List.copyOf(entries);
        problems = List.copyOf(problems);
        trail = Collections.unmodifiableMap(new TreeMap<>(trail));
    }

    /** Reads a journal; never throws for what the keeper wrote: all problems are in {@link #problems}. */
    public static Journal read(Path root) {
        return new JournalReader(root).read();
    }
}
