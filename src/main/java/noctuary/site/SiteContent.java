package noctuary.site;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import noctuary.advice.Advice;
import noctuary.entry.Journal;
import noctuary.measure.EntrySheet;
import noctuary.measure.RigSheet;
import noctuary.measure.SkyMatch;
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
 * @param skies by target id: attempts laid on one grid; only for targets with two or more that can be shown
 * @param unshown why a picture of a note cannot be shown, by the address that its page looks for it at
 */
public record SiteContent(
        Journal journal,
        List<EntrySheet> entries,
        Map<String, RigSheet> rigs,
        List<TargetSheet> targets,
        List<Review> reviews,
        Advice advice,
        Map<String, Map<String, Picture>> pictures,
        Map<String, List<VersionSheet>> versions,
        Map<String, Sky> skies,
        Map<String, String> unshown) {

    /**
     * All attempts on a target on one grid.
     *
     * @param reference slug of the attempt that gives scale and orientation
     * @param scale pixels of the reference that one pixel of the grid spans
     * @param northUp whether north is up, as world coordinates in a header say; else the reference's own up
     * @param views of the attempts that could be laid, oldest first; the reference is one of them
     * @param whyNot by slug: why an attempt could not be laid, a sentence without its full stop
     */
    public record Sky(
            String reference,
            int width,
            int height,
            double scale,
            boolean northUp,
            List<View> views,
            Map<String, String> whyNot) {
        public Sky {
            views = List.copyOf(views);
        }
    }

    /**
     * One attempt on the grid.
     *
     * @param alike under the stretch that all share; absent for a finished picture, and where too few stars of known
     *     light are shared
     * @param own under its own stretch, or as finished
     * @param finished whether a finished picture stands for it, not linear data
     * @param stars of four corners and the middle, as its own file is shown
     */
    public record View(
            String slug, SkyMatch match, boolean finished, Optional<Picture> alike, Picture own, List<CutStar> stars) {
        public View {
            stars = List.copyOf(stars);
        }
    }

    /**
     * One star, enlarged.
     *
     * @param path from the output folder; empty where no star was measured in that part of the field
     */
    public record CutStar(String place, String path, int side, double fwhmPx, double ellipticity) {}

    /**
     * A picture already written below the output folder, in several widths, widest last.
     *
     * @param sourceWidth pixels of the source, so that overlays can be scaled
     * @param sizes at least one
     * @param tiles when the source is larger than the widest
     */
    public record Picture(int sourceWidth, int sourceHeight, List<Size> sizes, Optional<TileSet> tiles) {
        public Picture {
            sizes = List.copyOf(sizes);
            if (sizes.isEmpty()) {
                throw new IllegalArgumentException("a picture of no width");
            }
        }

        public Picture(int sourceWidth, int sourceHeight, List<Size> sizes) {
            this(sourceWidth, sourceHeight, sizes, Optional.empty());
        }
    }

    /**
     * Tiles as {@code folder/LEVEL/COLUMN_ROW.jpg}, level 0 of {@code width} x {@code height}, each further one half.
     *
     * @param folder from the output folder, with forward slashes
     * @param side of a tile in pixels
     */
    public record TileSet(String folder, int side, int levels, int width, int height) {}

    /** @param path from the output folder, with forward slashes */
    public record Size(String path, int width, int height) {}
}
