package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.Typed;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameSheet;
import noctuary.measure.RigSheet;

/**
 * What one night gave an entry: the smallest thing that a review counts.
 *
 * @param traits what its files tell
 * @param rigSheet absent when the entry names no rig
 * @param state that rig as it was that night
 */
public record EntryNight(
        EntrySheet sheet, NightTraits traits, Optional<RigSheet> rigSheet, Optional<RigSheet.State> state) {

    public LocalDate night() {
        return traits.night();
    }

    /** Counted frames of that night; the stack where there are none; empty when both are gone. */
    List<FrameSheet> files() {
        return traits.files().stream()
                .map(at -> at == NightTraits.STACK
                        ? sheet.stack().orElseThrow()
                        : sheet.frames().get(at))
                .toList();
    }

    /** How many files those are. */
    public int fileCount() {
        return traits.files().size();
    }

    /** In all; absent when nothing tells it. */
    public OptionalDouble exposureSeconds() {
        return traits.exposureSeconds();
    }

    public NightSky sky() {
        return traits.sky();
    }

    /** Whether it is the entry's first night, to which belongs what the note says of the whole entry. */
    public boolean first() {
        return traits.first();
    }

    /** What it tells of a measure. */
    Reading reading(Measure measure) {
        return traits.readings().get(measure.id());
    }

    public String slug() {
        return sheet.entry().slug();
    }

    /** Id of the rig, empty for none. */
    public String rig() {
        return sheet.entry().rig().map(Typed::value).orElse("");
    }

    /** Id of the site, empty for none. */
    public String site() {
        return sheet.entry().site().map(Typed::value).orElse("");
    }

    /** One spelling for the same object; empty when not known. */
    public String target() {
        return traits.target();
    }

    /** Filters of the files, or as typed, joined; empty when none is told. */
    public String filter() {
        return traits.filter();
    }

    /** Whether the pixels are those of a combined file. */
    public boolean stacked() {
        return traits.stacked();
    }
}
