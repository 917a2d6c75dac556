package noctuary.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.entry.NoteWords;
import noctuary.keep.Branches;
import noctuary.site.RewordedPages;

/**
 * A render after which only the words of one note are others, not what it says of frames, rigs or processing: its page
 * and the words of the find page are all that shows them, so the rest of the site stands. With more notes than one, a
 * render that is killed could leave some of their pages new and some old, so those are for a whole render.
 */
record Rewording(Path root, Path output, Wording before) {

    /**
     * Puts the words into the site; empty, and nothing done, when anything else changed too.
     *
     * @param looks what the folder of the notes looks like now
     * @param rest as in {@link Wording}, now
     * @return the files written, by path
     * @throws IOException when they cannot be written; the site stands as it was
     */
    Optional<Map<String, byte[]>> make(Branches looks, String rest) throws IOException {
        Optional<NoteWords> note = before.rest().equals(rest)
                ? changed(looks).flatMap(branch -> NoteWords.again(root, looks, branch))
                : Optional.empty();
        if (note.isEmpty()
                || !note.get().facts().equals(before.facts().get(note.get().slug()))) {
            return Optional.empty();
        }
        var pages = new RewordedPages(before.entries(), Places.memo(root), Places.ownTemplates(root), output);
        Optional<Map<String, byte[]>> files =
                pages.of(note.get().slug(), note.get().html());
        if (files.isPresent()) {
            Amendment.make(output, files.get());
        }
        return files;
    }

    /** The branch whose note changed, when it is the only one, nothing else did, and nobody leans on it. */
    private Optional<Path> changed(Branches looks) {
        boolean sameBesides = looks.trouble().isEmpty()
                && looks.digests().keySet().equals(before.branches().keySet())
                && looks.besides().equals(before.besides());
        if (!sameBesides || leanedOn(looks.folder())) {
            return Optional.empty();
        }
        List<Path> changed = looks.digests().entrySet().stream()
                .filter(e -> !e.getValue().equals(before.branches().get(e.getKey())))
                .map(e -> looks.folder().resolve(e.getKey()))
                .toList();
        return changed.size() == 1 && !leanedOn(changed.get(0)) ? Optional.of(changed.get(0)) : Optional.empty();
    }

    private boolean leanedOn(Path place) {
        return before.leanedOn().contains(place.toString());
    }
}
