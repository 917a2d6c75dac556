package noctuary.site;

import java.util.List;
import java.util.Map;
import noctuary.advice.Advice;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;
import noctuary.measure.TargetSheet;
import noctuary.measure.VersionSheet;
import noctuary.review.Review;

/**
 * All that the pages show.
 *
 * @param entries newest night first
 * @param reviews of every change, by date
 * @param pictures by slug, then by {@code stack} or the version's name
 * @param versions by slug, in the order of the note, against what they came from
 */
public record SiteContent(
        Journal journal,
        List<EntrySheet> entries,
        Map<String, RigSheet> rigs,
        List<TargetSheet> targets,
        List<Review> reviews,
        Advice advice,
        Map<String, Map<String, Picture>> pictures,
        Map<String, List<VersionSheet>> versions) {

    /**
     * A picture already written below the output folder, in several widths, widest last.
     *
     * @param sourceWidth pixels of the source, so that overlays can be scaled
     */
    public record Picture(int sourceWidth, int sourceHeight, List<Size> sizes) {}

    /** @param path from the output folder, with forward slashes */
    public record Size(String path, int width, int height) {}
}
