package noctuary.image;

/**
 * Where stored pixels stand when a picture is shown upright (tag 274 of TIFF 6.0, section 8, and of Exif 2.3, 4.6.4).
 *
 * @param width of the upright picture
 * @param start index of the first stored pixel in it, row after row
 * @param alongRow how far the index moves with the next pixel of a stored row
 * @param alongColumn how far with the next row
 */
record Upright(int width, int height, int start, int alongRow, int alongColumn) {
    static final int AS_STORED = 1;

    private static final int MOST = 8;

    /**
     * @param orientation 1 to 8; any other counts as 1
     * @param width as stored
     */
    static Upright of(int orientation, int width, int height) {
        int known = orientation < AS_STORED || orientation > MOST ? AS_STORED : orientation;
        int right = width - 1;
        int below = height - 1;
        return switch (known) {
            case 2 -> new Upright(width, height, right, -1, width);
            case 3 -> new Upright(width, height, below * width + right, -1, -width);
            case 4 -> new Upright(width, height, below * width, 1, -width);
            case 5 -> new Upright(height, width, 0, height, 1);
            case 6 -> new Upright(height, width, below, height, -1);
            case 7 -> new Upright(height, width, right * height + below, -height, -1);
            case 8 -> new Upright(height, width, right * height, -height, 1);
            default -> new Upright(width, height, 0, 1, width);
        };
    }

    /** Where stored pixel (x, y) stands. */
    int index(int x, int y) {
        return start + x * alongRow + y * alongColumn;
    }

    boolean asStored() {
        return start == 0 && alongRow == 1;
    }
}
