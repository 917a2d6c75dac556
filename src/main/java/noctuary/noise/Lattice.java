package noctuary.noise;

import java.util.Optional;
import noctuary.image.Mosaic;

/**
 * How a frame is cut into cells of about {@value #CELL} px a side, and how its colours interleave: a pixel's phase is
 * {@code (y mod stride) * stride + x mod stride}, so that pixels of one phase lie under the same filter.
 *
 * @param stride 1, or 2 on a colour mosaic
 */
record Lattice(int width, int height, int columns, int rows, int stride) {
    static final int CELL = 64;

    static Lattice of(int width, int height, Optional<Mosaic> mosaic) {
        int stride = mosaic.isPresent() && width >= 2 && height >= 2 ? 2 : 1;
        return new Lattice(width, height, cells(width), cells(height), stride);
    }

    private static int cells(int length) {
        return Math.max(1, Math.round(length / (float) CELL));
    }

    int phases() {
        return stride * stride;
    }

    /** First column of cell {@code column}; of {@code columns()}, the width. */
    int left(int column) {
        return (int) ((long) column * width / columns);
    }

    int top(int row) {
        return (int) ((long) row * height / rows);
    }

    /** Middle of a cell, in pixel coordinates. */
    double middleX(int column) {
        return (left(column) + left(column + 1) - 1) / 2.0;
    }

    double middleY(int row) {
        return (top(row) + top(row + 1) - 1) / 2.0;
    }
}
