package noctuary.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import noctuary.fact.Problem;

/**
 * All that the keeper wrote, and everything wrong with it.
 *
 * @param root the journal's folder
 * @param rigs by id, in order of first use
 * @param entries sorted by slug
 * @param problems by file and line
 */
public record Journal(
        Path root,
        Settings settings,
        Map<String, RigNote> rigs,
        Map<String, Site> sites,
        List<Entry> entries,
        List<Problem> problems) {

    /** Reads a journal; never throws for what the keeper wrote: all problems are in {@link #problems}. */
    public static Journal read(Path root) {
        throw new UnsupportedOperationException("not built yet: " + root);
    }
}
