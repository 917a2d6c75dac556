package noctuary.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import noctuary.entry.Typed;
import noctuary.measure.EntrySheet;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.measure.RigSheet;
import noctuary.sky.Catalogue;

/**
 * What one night gave an entry: the smallest thing that a review counts.
 *
 * @param files counted frames of that night; the stack where there are none; empty when both are gone
 * @param exposureSeconds in all; absent when nothing tells it
 * @param rigSheet absent when the entry names no rig
 * @param state that rig as it was that night
 * @param first whether it is the entry's first night, to which belongs what the note says of the whole entry
 */
public record EntryNight(
        EntrySheet sheet,
        LocalDate night,
        List<FrameSheet> files,
        OptionalDouble exposureSeconds,
        NightSky sky,
        Optional<RigSheet> rigSheet,
        Optional<RigSheet.State> state,
        boolean first) {
    public EntryNight {
        files = List.copyOf(files);
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
        return sheet.target().map(Catalogue::canonicalName).orElse("");
    }

    /** Filters of the files, or as typed, joined; empty when none is told. */
    public String filter() {
        List<String> told = files.stream()
                .flatMap(f -> f.report().filter().stream())
                .distinct()
                .sorted()
                .toList();
        if (!files.isEmpty()) {
            return String.join(", ", told);
        }
        return String.join(
                ", ",
                sheet.entry().exposure().stream()
                        .map(e -> e.value().filter())
                        .filter(f -> !f.isEmpty())
                        .distinct()
                        .sorted()
                        .toList());
    }

    /** Whether the pixels are those of a combined file. */
    public boolean stacked() {
        return files.stream().anyMatch(f -> f.report().kind() != FrameReport.Kind.SINGLE);
    }
}
