package noctuary.effect;

/**
 * A rectangle of the picture's grid with its pixels and those of the origin laid on it.
 *
 * @param x left column on the picture
 * @param origin main plane, as stored; NaN where missing
 * @param picture main plane, as a share of white
 * @param colours the picture's three planes as shares of white; empty for a grey one
 */
record Tile(int x, int y, int width, int height, float[] origin, float[] picture, float[][] colours) {
    int size() {
        return width * height;
    }

    /** The index of a pixel of the picture; -1 outside of this tile. */
    int indexOf(int px, int py) {
        boolean inside = px >= x && py >= y && px < x + width && py < y + height;
        return inside ? (py - y) * width + px - x : -1;
    }
}
