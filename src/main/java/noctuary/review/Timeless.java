package noctuary.review;

import java.util.Optional;
import noctuary.entry.Entry;
import noctuary.measure.EntrySheet;

/**
 * An entry that no side of a change holds whole, because its night or the time of some frames is not known.
 *
 * @param said its slug, with the number of frames where it is these alone
 */
record Timeless(Entry entry, String said) {
    /** Empty for an entry whose times are all known. */
    static Optional<Timeless> of(EntrySheet sheet) {
        String slug = sheet.entry().slug();
        if (sheet.night().value().isEmpty()) {
            return Optional.of(new Timeless(sheet.entry(), slug));
        }
        int frames = sheet.timeless();
        return frames == 0
                ? Optional.empty()
                : Optional.of(
                        new Timeless(sheet.entry(), slug + " (" + frames + (frames == 1 ? " frame)" : " frames)")));
    }
}
