package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import noctuary.measure.RigSheet;

/**
 * One side of a change.
 *
 * @param id of the rig or site, as in the downloads; the name where there is none
 * @param name as a reader knows it, such as the rig's name or {@code spacer 16.5 mm}
 * @param nights by date
 * @param alikeInLight further nights with the same rig but for its spacing, which moves no light: for measures of the sky
 */
public record Side(String id, String name, List<EntryNight> nights, List<EntryNight> alikeInLight) {
    public Side {
        nights = List.copyOf(nights);
        alikeInLight = List.copyOf(alikeInLight);
    }

    Side(String id, String name, List<EntryNight> nights) {
        this(id, name, nights, List.of());
    }

    /** A side that has no id but its name. */
    static Side named(String name, List<EntryNight> nights) {
        return new Side(name, name, nights);
    }

    /** Slugs of the entries, oldest night first, each once. */
    public List<String> entries() {
        return nights.stream().map(EntryNight::slug).distinct().toList();
    }

    public List<LocalDate> dates() {
        return nights.stream().map(EntryNight::night).distinct().toList();
    }

    /** Number of files that were measured. */
    public int files() {
        return nights.stream().mapToInt(EntryNight::fileCount).sum();
    }

    /** The rig's last state on this side. */
    Optional<RigSheet.State> state() {
        return nights.stream().flatMap(n -> n.state().stream()).reduce((earlier, later) -> later);
    }
}
