package noctuary.entry;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import noctuary.fact.Problem;
import noctuary.keep.Branches;
import noctuary.keep.Memo;

/**
 * All that the keeper wrote, and everything wrong with it.
 *
 * @param root the journal's folder, with symbolic links resolved
 * @param rigs by id, in order of the date from which they are in use, undated ones last
 * @param entries sorted by slug
 * @param problems by file and line
 * @param trail places outside {@code entries} that notes led to, with the {@link noctuary.keep.Glance} taken before each
 *     was looked at
 * @param looks what {@code entries} looked like before it was read, or unknown
 * @param facts of the notes of entries
 */
public record Journal(
        Path root,
        Settings settings,
        Map<String, RigNote> rigs,
        Map<String, Site> sites,
        List<Entry> entries,
        List<Problem> problems,
        Map<Path, String> trail,
        Branches looks,
        NoteFacts facts) {
    public Journal {
        rigs = Collections.unmodifiableMap(new LinkedHashMap<>(rigs));
        sites = Collections.unmodifiableMap(new LinkedHashMap<>(sites));
        entries = List.copyOf(entries);
        problems = List.copyOf(problems);
        trail = Collections.unmodifiableMap(new TreeMap<>(trail));
    }

    public Journal(
            Path root,
            Settings settings,
            Map<String, RigNote> rigs,
            Map<String, Site> sites,
            List<Entry> entries,
            List<Problem> problems,
            Map<Path, String> trail) {
        this(
                root,
                settings,
                rigs,
                sites,
                entries,
                problems,
                trail,
                Branches.unknown(root.resolve("entries")),
                NoteFacts.NONE);
    }

    /** Reads a journal; never throws for what the keeper wrote: all problems are in {@link #problems}. */
    public static Journal read(Path root) {
        return read(root, Branches.unknown(root.resolve("entries")), Memo.NONE);
    }

    /**
     * As {@link #read(Path)}, without reading notes again around which nothing changed.
     *
     * @param looks what {@code entries} looked like before
     */
    public static Journal read(Path root, Branches looks, Memo memo) {
        return new JournalReader(root, looks, memo).read();
    }
}
