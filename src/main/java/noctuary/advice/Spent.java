package noctuary.advice;

import java.time.LocalDate;
import java.util.List;
import noctuary.entry.Entry;

/**
 * What one entry made of one night.
 *
 * @param rig as printed; empty when not told
 * @param seconds of exposure
 * @param lost as the keeper wrote it
 */
public record Spent(LocalDate night, String rig, double seconds, List<Entry.Lost> lost) {
    public Spent {
        lost = List.copyOf(lost);
    }
}
