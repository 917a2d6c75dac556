package noctuary.noise;

import java.util.List;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * Noise of block means on quiet tiles. Blocks are made of pixels of one phase, those with a masked pixel are left out,
 * and blocks are compared with the second next to both sides, which slopes and smoothed edges do not touch.
 */
final class BlockNoise {
    private final List<QuietTile> tiles;
    private final int stride;
    private final int phaseX;
    private final double unit;

    /** @param unit of the tiles' values */
    BlockNoise(List<QuietTile> tiles, int stride, int phaseX, double unit) {
        this.tiles = tiles;
        this.stride = stride;
        this.phaseX = phaseX;
        this.unit = unit;
    }

    /** Standard deviation of means of {@code size} x {@code size} pixels, times {@code size}; NaN when none are left. */
    double sigma(int size) {
        if (size == 1) {
            return unit * singlePixels();
        }
        int most = tiles.stream()
                .mapToInt(t -> t.width() / (size * stride) * (t.height() / (size * stride)))
                .sum();
        float[] differences = new float[most];
        int count = 0;
        for (QuietTile tile : tiles) {
            for (int row = 0; row < tile.height() / (size * stride); row++) {
                count = add(blocks(tile, row * size, size), differences, count);
            }
        }
        return unit * size * Robust.MAD_TO_SIGMA / Math.sqrt(6) * Selection.median(differences, count);
    }

    private static int add(double[] blocks, float[] differences, int from) {
        int count = from;
        for (int i = 2; i < blocks.length - 2; i++) {
            double d = Math.abs(2 * blocks[i] - blocks[i - 2] - blocks[i + 2]);
            if (d == d) {
                differences[count++] = (float) d;
            }
        }
        return count;
    }

    private double[] blocks(QuietTile tile, int firstRow, int size) {
        double[] means = new double[tile.width() / (size * stride)];
        for (int y = firstRow; y < firstRow + size; y++) {
            for (int x = 0; x < means.length * size; x++) {
                means[x / size] += phase(tile, x, y) / (size * size);
            }
        }
        return means;
    }

    /** Pixel (x, y) of the phase; tiles start on whole cells of the mosaic. */
    private float phase(QuietTile tile, int x, int y) {
        return tile.at(x * stride + phaseX, y * stride);
    }

    /** Standard deviation; the tails beyond four sigmas are masked already. */
    private double singlePixels() {
        double sum = 0;
        double sum2 = 0;
        long count = 0;
        for (QuietTile tile : tiles) {
            for (int y = 0; y < tile.height() / stride; y++) {
                for (int x = 0; x < tile.width() / stride; x++) {
                    float value = phase(tile, x, y);
                    if (value == value) {
                        sum += value;
                        sum2 += value * value;
                        count++;
                    }
                }
            }
        }
        return Math.sqrt((sum2 - sum * sum / count) / count);
    }
}
