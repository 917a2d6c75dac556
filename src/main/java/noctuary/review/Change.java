package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A difference in rig, site or way of working, or a choice against its absence, with the nights on either side.
 *
 * @param id stays the same as the journal grows; unique among those derived
 * @param date of the change; absent for two sides that no date divides
 * @param sentence what changed
 * @param part that changed within a rig, or the step of a choice; absent for everything else
 * @param words what the note of the first night after says of it
 */
public record Change(
        String id,
        ChangeKind kind,
        Optional<LocalDate> date,
        String sentence,
        Optional<String> part,
        Side before,
        Side after,
        List<String> words) {
    public Change {
        words = List.copyOf(words);
    }

    Change named(String other) {
        return new Change(other, kind, date, sentence, part, before, after, words);
    }
}
