package noctuary.noise;

import noctuary.image.Plane;

/**
 * The rows of a frame with what was never exposed taken out: where {@code padded}, zeros that run in from either end of
 * a row are missing (frames shifted onto a common grid end in such zeros).
 */
record FramePixels(Plane plane, boolean padded) {
    int width() {
        return plane.width();
    }

    int height() {
        return plane.height();
    }

    /** Fills {@code into} with row {@code y}; NaN where missing or not finite. */
    void copyRow(int y, float[] into) {
        plane.copyRow(0, y, plane.width(), into, 0);
        if (padded) {
            blankEnds(into, plane.width());
        }
    }

    private static void blankEnds(float[] row, int width) {
        int first = 0;
        while (first < width && row[first] == 0) {
            row[first++] = Float.NaN;
        }
        for (int last = width - 1; last > first && row[last] == 0; last--) {
            row[last] = Float.NaN;
        }
    }
}
