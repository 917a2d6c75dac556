package noctuary.noise;

import noctuary.stats.Selection;

/**
 * A quiet tile freed of everything broad, in units of what noise is left: the mean of the 25 x 25 px around it is taken
 * off every pixel, and what then still stands out is masked. A streak, which is a pixel wide, loses hardly more than
 * what its surroundings lose too; clouds, galaxies and the haze of clusters go.
 */
final class FlatTile {
    private static final int SIDE = QuietTile.SIDE;
    private static final int REACH = 12;
    private static final int PASSES = 2;
    /** Share of the pixels around that must be known. */
    private static final double LEAST_KNOWN = 0.25;

    private static final double SIGMAS = 3.5;
    /** Of the pixels of a row, one in so many tells the noise: 8000 of a tile, known to 1 %. */
    private static final int EVERY = 8;

    private final int width;
    private final int height;
    private final float[] mask = new float[SIDE * SIDE];
    private final float[] flat = new float[SIDE * SIDE];
    /** For what is wanted for the time being: new arrays for each step would be most of what a frame allocates. */
    private final float[] sums = new float[SIDE * SIDE];

    private final float[] spare = new float[SIDE * SIDE];
    private final BoxSums boxes;
    private double known;

    FlatTile(QuietTile tile) {
        this.width = tile.width();
        this.height = tile.height();
        this.boxes = new BoxSums(width, height, SIDE, REACH);
        float[] pixels = new float[SIDE * SIDE];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float v = tile.at(x, y);
                mask[y * SIDE + x] = Float.isNaN(v) ? 0 : 1;
                pixels[y * SIDE + x] = Float.isNaN(v) ? 0 : v;
            }
        }
        for (int pass = 0; pass < PASSES; pass++) {
            flatten(pixels);
            maskWhatStandsOut();
        }
        finish();
    }

    /** Number of pixels that count. */
    double known() {
        return known;
    }

    /** Pixels the local mean off, 0 where masked. */
    private void flatten(float[] pixels) {
        for (int i = 0; i < flat.length; i++) {
            flat[i] = pixels[i] * mask[i];
        }
        boxes.sum(flat, REACH, sums);
        float[] counts = spare;
        boxes.sum(mask, REACH, counts);
        double least = LEAST_KNOWN * (2 * REACH + 1) * (2 * REACH + 1);
        for (int i = 0; i < flat.length; i++) {
            mask[i] = counts[i] < least ? 0 : mask[i];
            flat[i] = mask[i] == 0 ? 0 : pixels[i] - sums[i] / counts[i];
        }
    }

    private void maskWhatStandsOut() {
        boxes.sum(flat, 1, sums);
        float most = (float) (SIGMAS * sigma(flat));
        float mostAround = (float) (SIGMAS * sigma(sums));
        float[] before = spare;
        System.arraycopy(mask, 0, before, 0, mask.length);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * SIDE + x;
                if (Math.abs(flat[i]) > most && before[i] != 0) {
                    mask[i] = 0;
                }
                if (sums[i] > mostAround && before[i] != 0) {
                    blank(x, y);
                }
            }
        }
    }

    private void blank(int cx, int cy) {
        for (int y = Math.max(0, cy - 2); y <= Math.min(height - 1, cy + 2); y++) {
            for (int x = Math.max(0, cx - 2); x <= Math.min(width - 1, cx + 2); x++) {
                mask[y * SIDE + x] = 0;
            }
        }
    }

    /** Of the values that are not masked; 0 when there are none. */
    private double sigma(float[] values) {
        float[] some = new float[height * (width / EVERY + 1)];
        int count = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 3 * y % EVERY; x < width; x += EVERY) {
                if (mask[y * SIDE + x] != 0) {
                    some[count++] = values[y * SIDE + x];
                }
            }
        }
        return count == 0 ? 0 : Selection.sigma(some, count, Selection.median(some, count));
    }

    private void finish() {
        float sigma = (float) sigma(flat);
        for (int i = 0; i < flat.length; i++) {
            flat[i] = sigma > 0 ? flat[i] * mask[i] / sigma : 0;
            known += mask[i];
        }
    }

    /**
     * Power spectra of the pixels, freed of the means of their rows and columns, and of their mask.
     *
     * @param rows number of rows whose mean was removed
     */
    record Power(float[] pixels, float[] mask, int rows, int columns) {}

    Power power() {
        float[] re = sums;
        float[] im = spare;
        System.arraycopy(flat, 0, re, 0, flat.length);
        System.arraycopy(mask, 0, im, 0, mask.length);
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
            removeRowMean(re, y * SIDE);
        }
        removeColumnMeans(re);
    }

    private void removeRowMean(float[] re, int from) {
        double sum = 0;
        double weight = 0;
        for (int i = from; i < from + width; i++) {
            sum += mask[i] * re[i];
            weight += mask[i];
        }
        float mean = weight > 0 ? (float) (sum / weight) : 0;
        for (int i = from; i < from + width; i++) {
            re[i] = mask[i] * (re[i] - mean);
        }
    }

    /** Of all columns at once, so that memory is walked in its own order. */
    private void removeColumnMeans(float[] re) {
        float[] sum = new float[width];
        float[] weight = new float[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                sum[x] += mask[y * SIDE + x] * re[y * SIDE + x];
                weight[x] += mask[y * SIDE + x];
            }
        }
        for (int x = 0; x < width; x++) {
            sum[x] = weight[x] > 0 ? sum[x] / weight[x] : 0;
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                re[y * SIDE + x] = mask[y * SIDE + x] * (re[y * SIDE + x] - sum[x]);
            }
        }
    }

    private static float square(float value) {
        return value * value;
    }
}
