package noctuary.advice;

import java.util.List;
import java.util.Optional;

/**
 * One lesson and what became of it.
 *
 * @param id entry, #, tag
 * @param openedBy slug of the entry that wrote it down
 * @param closedBy slug of the first entry that closed it; absent while it is open
 * @param seenAgain slugs of later entries with the same trouble, oldest first
 * @param returned whether one of them is later than the entry that closed it
 */
public record LessonState(
        String id,
        String about,
        String todo,
        String openedBy,
        Optional<String> closedBy,
        List<String> seenAgain,
        boolean returned) {
    public LessonState {
        seenAgain = List.copyOf(seenAgain);
    }

    public boolean open() {
        return closedBy.isEmpty();
    }
}
