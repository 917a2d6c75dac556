package noctuary.entry;

import java.nio.file.Path;
import java.util.Optional;
import noctuary.keep.Branches;
import noctuary.keep.Memo;

/**
 * The words of an entry's note, apart from the facts that it tells.
 *
 * @param facts stands for all else that the note says, and for what it leans on outside its own branch
 * @param html as in {@link Entry}
 */
public record NoteWords(String slug, String facts, String html) {
    /**
     * Of the note in one branch of {@code entries}, read again by itself; empty when there is none.
     *
     * @param looks what {@code entries} looked like before
     */
    public static Optional<NoteWords> again(Path root, Branches looks, Path branch) {
        return new JournalReader(root, looks, Memo.NONE).again(branch);
    }

    /** Whether an entry's note is looked for at a place in {@code entries}. */
    public static boolean isNote(Path place) {
        return NoteFiles.isEntry(place);
    }
}
