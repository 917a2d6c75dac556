package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import noctuary.entry.NoteWords;
import noctuary.keep.Branches;
import noctuary.site.RewordedPages;

/**
 * A render after which only the words of a few notes are others, not what they say of frames, rigs or processing: their
 * pages and the words of the find page are all that shows them, so the rest of the site stands.
 */
record Rewording(Path root, Path output, Wording before) {
    /** More is a render like any other: then something else than writing went on. */
    private static final int MOST = 20;

    /**
     * Puts the words into the site; empty, and nothing done, when anything else changed too.
     *
     * @param looks what the folder of the notes looks like now
     * @param rest as in {@link Wording}, now
     * @return the files written, by path
     * @throws IOException when they cannot be written; the site stands as it was
     */
    Optional<Map<String, byte[]>> make(Branches looks, String rest) throws IOException {
        Optional<Set<Path>> changed = before.rest().equals(rest) ? changed(looks) : Optional.empty();
        if (changed.isEmpty()) {
            return Optional.empty();
        }
        Map<String, NoteWords> notes = NoteWords.again(root, looks, changed.get());
        Map<String, String> words = new LinkedHashMap<>();
        for (Map.Entry<String, NoteWords> note : notes.entrySet()) {
            if (!note.getValue().facts().equals(before.facts().get(note.getKey()))) {
                return Optional.empty();
            }
            words.put(note.getKey(), note.getValue().html());
        }
        if (words.size() != changed.get().size()) {
            return Optional.empty();
        }
        var pages = new RewordedPages(before.entries(), Places.memo(root), Places.ownTemplates(root), output);
        Optional<Map<String, byte[]>> files = pages.of(words);
        if (files.isPresent()) {
            Amendment.make(output, files.get());
        }
        return files;
    }

    /** Branches of which the note alone changed; empty when something else did, or too many. */
    private Optional<Set<Path>> changed(Branches looks) {
        boolean samePlaces = looks.trouble().isEmpty()
                && looks.digests().keySet().equals(before.branches().keySet())
                && looks.besides().equals(before.besides());
        if (!samePlaces || before.leanedOn().contains(looks.folder().toString())) {
            return Optional.empty();
        }
        Set<Path> changed = new LinkedHashSet<>();
        looks.digests().forEach((name, digest) -> {
            if (!digest.equals(before.branches().get(name))) {
                changed.add(looks.folder().resolve(name));
            }
        });
        boolean apart = changed.stream().map(Path::toString).noneMatch(before.leanedOn()::contains);
        return apart && !changed.isEmpty() && changed.size() <= MOST ? Optional.of(changed) : Optional.empty();
    }
}
