package noctuary.noise;

import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.image.Mosaic;

/**
 * How a frame is cut into cells of about {@value #CELL} px a side, and how its colours interleave: a pixel's phase is
 * {@code (y mod stride) * stride + x mod stride}, so that pixels of one phase lie under the same filter.
 */
final class Lattice {
    static final int CELL = 64;

    private final int width;
    private final int height;
    private final int stride;
    /** Where cells begin, and last where they end: asked for so often that dividing anew would show. */
    private final int[] lefts;

    private final int[] tops;

    private Lattice(int width, int height, int stride) {
        this.width = width;
        this.height = height;
        this.stride = stride;
        this.lefts = edges(width);
        this.tops = edges(height);
    }

    static Lattice of(int width, int height, Optional<Mosaic> mosaic) {
        return new Lattice(width, height, mosaic.isPresent() && width >= 2 && height >= 2 ? 2 : 1);
    }

    private static int[] edges(int length) {
        int cells = Math.max(1, Math.round(length / (float) CELL));
        return IntStream.rangeClosed(0, cells)
                .map(i -> (int) ((long) i * length / cells))
                .toArray();
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    int columns() {
        return lefts.length - 1;
    }

    int rows() {
        return tops.length - 1;
    }

    /** 1, or 2 on a colour mosaic. */
    int stride() {
        return stride;
    }

    int phases() {
        return stride * stride;
    }

    /** First column of cell {@code column}; of {@code columns()}, the width. */
    int left(int column) {
        return lefts[column];
    }

    int top(int row) {
        return tops[row];
    }

    /** Middle of a cell, in pixel coordinates. */
    double middleX(int column) {
        return (lefts[column] + lefts[column + 1] - 1) / 2.0;
    }

    double middleY(int row) {
        return (tops[row] + tops[row + 1] - 1) / 2.0;
    }
}
