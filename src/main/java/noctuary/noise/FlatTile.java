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

    private final float[] across = new float[SIDE * SIDE];
    private double known;

    FlatTile(QuietTile tile) {
        this.width = tile.width();
        this.height = tile.height();
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
        boxSums(flat, REACH, sums);
        float[] counts = new float[SIDE * SIDE];
        boxSums(mask, REACH, counts);
        double least = LEAST_KNOWN * (2 * REACH + 1) * (2 * REACH + 1);
        for (int i = 0; i < flat.length; i++) {
            mask[i] = counts[i] < least ? 0 : mask[i];
            flat[i] = mask[i] == 0 ? 0 : pixels[i] - sums[i] / counts[i];
        }
    }

    private void maskWhatStandsOut() {
        boxSums(flat, 1, sums);
        double most = SIGMAS * sigma(flat);
        double mostAround = SIGMAS * sigma(sums);
        float[] before = across;
        System.arraycopy(mask, 0, before, 0, mask.length);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * SIDE + x;
                if (before[i] != 0 && Math.abs(flat[i]) > most) {
                    mask[i] = 0;
                }
                if (before[i] != 0 && sums[i] > mostAround) {
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

    /** Sums over squares of side 2 {@code reach} + 1, as far as they lie in the tile. */
    private void boxSums(float[] values, int reach, float[] into) {
        for (int y = 0; y < height; y++) {
            sumsAcross(values, y * SIDE, width, reach, across);
        }
        sumsDown(across, reach, into);
    }

    /** Row by row, so that memory is walked in its own order. */
    private void sumsDown(float[] from, int reach, float[] into) {
        double[] sum = new double[width];
        for (int y = 0; y < Math.min(height, reach); y++) {
            addRow(from, y, 1, sum);
        }
        for (int y = 0; y < height; y++) {
            if (y + reach < height) {
                addRow(from, y + reach, 1, sum);
            }
            if (y - reach - 1 >= 0) {
                addRow(from, y - reach - 1, -1, sum);
            }
            for (int x = 0; x < width; x++) {
                into[y * SIDE + x] = (float) sum[x];
            }
        }
    }

    private static void addRow(float[] from, int y, int sign, double[] sum) {
        for (int x = 0; x < sum.length; x++) {
            sum[x] += sign * from[y * SIDE + x];
        }
    }

    private static void sumsAcross(float[] from, int start, int count, int reach, float[] into) {
        double sum = 0;
        for (int k = 0; k < Math.min(count, reach); k++) {
            sum += from[start + k];
        }
        for (int k = 0; k < count; k++) {
            sum += k + reach < count ? from[start + k + reach] : 0;
            sum -= k - reach - 1 >= 0 ? from[start + k - reach - 1] : 0;
            into[start + k] = (float) sum;
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
        float[] im = across;
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
