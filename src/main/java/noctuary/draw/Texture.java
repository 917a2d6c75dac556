package noctuary.draw;

/** Fills that stay apart without colour. */
enum Texture {
    HATCH(5, "M-1 6L6 -1M-1 1L1 -1M4 6L6 4"),
    LEVEL(4, "M0 2L4 2"),
    COUNTER_HATCH(5, "M-1 -1L6 6M-1 4L1 6M4 -1L6 1"),
    GRID(5, "M0 2.5L5 2.5M2.5 0L2.5 5");

    private final int side;
    private final String strokes;

    Texture(int side, String strokes) {
        this.side = side;
        this.strokes = strokes;
    }

    /** Writes the pattern under the given id; {@code classes} give the colour of its strokes. */
    void define(Svg svg, String id, String classes) {
        svg.open("pattern", "id", id, "width", side, "height", side, "patternUnits", "userSpaceOnUse");
        svg.leaf("path", "class", classes + " stroke", "d", strokes);
        svg.close();
    }
}
