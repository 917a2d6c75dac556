package noctuary.noise;

import noctuary.image.Plane;

/** A square of background in units of its noise, stars masked. */
final class QuietTile {
    static final int SIDE = 256;
    /** Pixels a side that are filled; the rest stays empty so that displacements do not wrap around. */
    static final int FILLED = SIDE - 32;

    private static final float SINGLE_SIGMAS = 4;
    /** Mean of 3 x 3 pixels, in sigmas of one, from which there is a star. */
    private static final float STAR_MEAN = 4f / 3;

    private static final int STAR_REACH = 3;

    private final int width;
    private final int height;
    private final float[] pixels = new float[SIDE * SIDE];
    private final float[] mask = new float[SIDE * SIDE];

    /**
     * Power spectra of the pixels, freed of the means of their rows and columns, and of their mask.
     *
     * @param rows number of rows whose mean was removed
     */
    record Power(float[] pixels, float[] mask, int rows, int columns) {}

    QuietTile(Grid grid, int left, int top) {
        Plane plane = grid.pixels().plane();
        this.width = Math.min(FILLED, plane.width() - left);
        this.height = Math.min(FILLED, plane.height() - top);
        BackgroundRows background = new BackgroundRows(grid, left, width);
        float[] row = new float[width];
        float[] residual = new float[width];
        for (int y = 0; y < height; y++) {
            plane.copyRow(left, top + y, width, row, 0);
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
        boolean[] star = new boolean[SIDE * SIDE];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                star[y * SIDE + x] = boxSum(x, y) > 9 * STAR_MEAN;
            }
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (star[y * SIDE + x]) {
                    blank(x, y, STAR_REACH);
                } else if (Math.abs(pixels[y * SIDE + x]) > SINGLE_SIGMAS) {
                    blank(x, y, 0);
                }
            }
        }
    }

    /** Over 3 x 3 pixels. */
    private float boxSum(int x, int y) {
        if (x == 0 || y == 0) {
            return 0;
        }
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

    Power power() {
        float[] re = pixels.clone();
        float[] im = mask.clone();
        removeLineMeans(re);
        new Fourier(SIDE).transform(re, im);
        float[] ofPixels = new float[SIDE * SIDE];
        float[] ofMask = new float[SIDE * SIDE];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                int i = y * SIDE + x;
                int j = (-y & SIDE - 1) * SIDE + (-x & SIDE - 1);
                ofPixels[i] = square(re[i] + re[j]) + square(im[i] - im[j]);
                ofMask[i] = square(im[i] + im[j]) + square(re[i] - re[j]);
            }
        }
        return new Power(ofPixels, ofMask, height, width);
    }

    private void removeLineMeans(float[] re) {
        for (int y = 0; y < height; y++) {
            removeMean(re, y * SIDE, 1, width);
        }
        for (int x = 0; x < width; x++) {
            removeMean(re, x, SIDE, height);
        }
    }

    private void removeMean(float[] re, int from, int step, int count) {
        double sum = 0;
        double weight = 0;
        for (int k = 0, i = from; k < count; k++, i += step) {
            sum += mask[i] * re[i];
            weight += mask[i];
        }
        float mean = weight > 0 ? (float) (sum / weight) : 0;
        for (int k = 0, i = from; k < count; k++, i += step) {
            re[i] = mask[i] * (re[i] - mean);
        }
    }

    private static float square(float value) {
        return value * value;
    }
}
