package noctuary.draw;

/** A dot defined once in a drawing, on every corner of its lines. */
final class Dot {
    private static final double RADIUS = 2.6;

    private Dot() {}

    /** Writes the dot under the given part's id; {@code classes} give its colour. */
    static void define(Svg svg, String part, String classes) {
        double side = 2 * RADIUS + 1;
        double middle = side / 2;
        svg.open(
                "marker",
                "id",
                svg.idOf(part),
                "markerUnits",
                "userSpaceOnUse",
                "markerWidth",
                side,
                "markerHeight",
                side,
                "refX",
                middle,
                "refY",
                middle);
        svg.circle(classes + " solid", middle, middle, RADIUS);
        svg.close();
    }

    /** A line with the dot at each of its points, also at those that it does not join. */
    static void along(Svg svg, String part, String classes, Trace trace) {
        String dot = "url(#" + svg.idOf(part) + ")";
        svg.leaf("path", "class", classes, "d", trace, "marker-start", dot, "marker-mid", dot, "marker-end", dot);
    }
}
