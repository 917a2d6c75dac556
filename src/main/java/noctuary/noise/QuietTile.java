package noctuary.noise;

import noctuary.image.Plane;
import noctuary.stats.Selection;

/** A square of background in units of its noise, stars masked. */
final class QuietTile {
    static final int SIDE = 256;
    /** Pixels a side that are filled; the rest stays empty so that displacements do not wrap around. */
    static final int FILLED = SIDE - 32;

    private static final float SINGLE_SIGMAS = 4;
    /** Sums of 3 x 3 pixels this many sigmas of such sums above the background are a star. */
    private static final double STAR_SIGMAS = 4;

    private static final int STAR_REACH = 3;

    private final int width;
    private final int height;
    private final float[] pixels = new float[SIDE * SIDE];
    private final float[] mask = new float[SIDE * SIDE];
    private final float[] stored;

    QuietTile(Grid grid, int left, int top) {
        Plane plane = grid.pixels().plane();
        this.width = Math.min(FILLED, plane.width() - left);
        this.height = Math.min(FILLED, plane.height() - top);
        BackgroundRows background = new BackgroundRows(grid, left, width);
        this.stored = new float[width * height];
        float[] row = new float[width];
        float[] residual = new float[width];
        for (int y = 0; y < height; y++) {
            plane.copyRow(left, top + y, width, row, 0);
            System.arraycopy(row, 0, stored, y * width, width);
            background.subtract(top + y, row, residual);
            for (int x = 0; x < width; x++) {
                float r = residual[x] / sigma(grid, left + x, top + y);
                boolean present =
                        Math.abs(r) < Float.POSITIVE_INFINITY && !(grid.pixels().padded() && row[x] == 0);
                pixels[y * SIDE + x] = present ? r : 0;
                mask[y * SIDE + x] = present ? 1 : 0;
            }
        }
        maskStars();
    }

    private static float sigma(Grid grid, int x, int y) {
        int stride = grid.lattice().stride();
        return (float) grid.phaseSigma()[stride == 1 ? 0 : y % 2 * 2 + x % 2];
    }

    private void maskStars() {
        float[] sums = new float[width * height];
        for (int y = 1; y < height; y++) {
            for (int x = 1; x < width; x++) {
                sums[y * width + x] = boxSum(x, y);
            }
        }
        double least = STAR_SIGMAS * Math.max(3, noiseOf(sums));
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (sums[y * width + x] > least) {
                    blank(x, y, STAR_REACH);
                } else if (Math.abs(pixels[y * SIDE + x]) > SINGLE_SIGMAS) {
                    blank(x, y, 0);
                }
            }
        }
    }

    /** Three where neighbours are independent, more in smoothed noise. */
    private static double noiseOf(float[] sums) {
        float[] some = new float[(sums.length + 6) / 7];
        for (int i = 0; i < some.length; i++) {
            some[i] = sums[7 * i];
        }
        return Selection.sigma(some, some.length, Selection.median(some, some.length));
    }

    /** Over 3 x 3 pixels. */
    private float boxSum(int x, int y) {
        int i = y * SIDE + x;
        return pixels[i - SIDE - 1]
                + pixels[i - SIDE]
                + pixels[i - SIDE + 1]
                + pixels[i - 1]
                + pixels[i]
                + pixels[i + 1]
                + pixels[i + SIDE - 1]
                + pixels[i + SIDE]
                + pixels[i + SIDE + 1];
    }

    private void blank(int cx, int cy, int reach) {
        for (int y = Math.max(0, cy - reach); y <= Math.min(height - 1, cy + reach); y++) {
            for (int x = Math.max(0, cx - reach); x <= Math.min(width - 1, cx + reach); x++) {
                mask[y * SIDE + x] = 0;
            }
        }
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** The value of a pixel of the tile; NaN where masked. */
    float at(int x, int y) {
        return mask[y * SIDE + x] == 0 ? Float.NaN : pixels[y * SIDE + x];
    }

    /** Rows of the pixels of one phase as stored, background and all; NaN where masked. */
    float[][] rows(int stride, int phaseX) {
        float[][] rows = new float[height / stride][width / stride];
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < rows[y].length; x++) {
                int atX = x * stride + phaseX;
                int atY = y * stride;
                rows[y][x] = mask[atY * SIDE + atX] == 0 ? Float.NaN : stored[atY * width + atX];
            }
        }
        return rows;
    }
}
