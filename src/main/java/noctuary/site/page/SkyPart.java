package noctuary.site.page;

import java.util.List;

/**
 * All attempts on a target on one grid.
 *
 * @param told what the grid is, in sentences
 * @param views oldest first; none when fewer than two could be laid
 * @param ratio width of the grid over its height in tenths, 3 to 20
 * @param places names of the places in the field, heads of the columns of {@code stars}
 * @param refused attempts that could not be laid
 */
public record SkyPart(
        List<String> told,
        int ratio,
        List<View> views,
        List<String> places,
        List<StarRow> stars,
        List<Refused> refused) {
    public SkyPart {
        told = List.copyOf(told);
        views = List.copyOf(views);
        places = List.copyOf(places);
        stars = List.copyOf(stars);
        refused = List.copyOf(refused);
    }

    /**
     * @param name short, for a list to choose from
     * @param alike under the stretch that all share, else {@code own} again
     * @param shares whether it has the shared stretch
     */
    public record View(String slug, String name, Link entry, String caption, Shown alike, Shown own, boolean shares) {}

    /** @param src a middling size; {@code srcset} names all */
    public record Shown(String src, String srcset, int width, int height, String alt, Deep deep) {}

    /** The stars of one attempt, a cell a place. */
    public record StarRow(Link entry, String caption, List<Star> cells) {
        public StarRow {
            cells = List.copyOf(cells);
        }
    }

    /** @param src empty where no star was measured */
    public record Star(String src, int side, String alt, String width, String shape) {}

    public record Refused(Link entry, String why) {}
}
