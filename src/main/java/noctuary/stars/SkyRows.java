package noctuary.stars;

/** Rows of sky and stars without gaps, less the level of the sky, at the resolution of the plane or at half of it. */
interface SkyRows {
    /** Columns x to x + count of row y into {@code row} from {@code at} on; x and y may lie outside. */
    void read(int x, int y, int count, float[] row, int at);

    /** Less the level of the sky, the value around (x, y) from which a pixel is more than sky; the largest float where
     * the sky has structure and none can be told. */
    float ceilingAt(double x, double y);

    /** Index within {@code length}, mirrored at the outermost pixels, which keeps the colour of a mosaic. */
    static int mirrored(int index, int length) {
        if (length == 1) {
            return 0;
        }
        int period = 2 * (length - 1);
        int i = Math.floorMod(index, period);
        return i < length ? i : period - i;
    }
}
