package noctuary.noise;

import java.util.List;
import noctuary.stats.Selection;

/**
 * Noise of block means on quiet tiles. Blocks are made of pixels of one phase, those with a masked pixel are left out,
 * and blocks are compared with the second next to both sides, which slopes and smoothed edges do not touch.
 */
final class BlockNoise {
    /** Mean of |x| between its quartiles for a standard normal x: 4 (φ(Φ⁻¹(5/8)) - φ(Φ⁻¹(7/8))). */
    private static final double FOLDED_MIDDLE_MEAN = 0.693367;

    private static final int SIZES = 4;

    private final double[] sigmas = new double[SIZES];

    /** @param unit of the tiles' values */
    BlockNoise(List<QuietTile> tiles, int stride, int phaseX, double unit) {
        List<Blocks> blocks = tiles.parallelStream()
                .map(tile -> Blocks.single(tile, stride, phaseX))
                .toList();
        sigmas[0] = unit * standardDeviation(blocks);
        for (int i = 1; i < SIZES; i++) {
            blocks = blocks.parallelStream().map(Blocks::halved).toList();
            sigmas[i] = unit * (1 << i) * ofDifferences(blocks);
        }
    }

    /**
     * Standard deviation of means of {@code size} x {@code size} pixels, times {@code size}; NaN when none are left.
     */
    double sigma(int size) {
        return sigmas[Integer.numberOfTrailingZeros(size)];
    }

    /** The tails beyond four sigmas are masked already. */
    private static double standardDeviation(List<Blocks> blocks) {
        double sum = 0;
        double sum2 = 0;
        long count = 0;
        for (Blocks tile : blocks) {
            for (float value : tile.means) {
                if (value == value) {
                    sum += value;
                    sum2 += value * value;
                    count++;
                }
            }
        }
        return Math.sqrt((sum2 - sum * sum / count) / count);
    }

    private static double ofDifferences(List<Blocks> blocks) {
        float[] differences =
                new float[blocks.stream().mapToInt(tile -> tile.means.length).sum()];
        int count = 0;
        for (Blocks tile : blocks) {
            count = tile.addDifferences(differences, count);
        }
        return Selection.middleMean(differences, count) / FOLDED_MIDDLE_MEAN / Math.sqrt(6);
    }

    /** Block means of one tile, row after row; NaN where a pixel is masked. */
    private record Blocks(int width, float[] means) {
        /** The pixels of one phase; tiles start on whole cells of the mosaic. */
        static Blocks single(QuietTile tile, int stride, int phaseX) {
            int width = tile.width() / stride;
            int height = tile.height() / stride;
            float[] pixels = new float[width * height];
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    pixels[y * width + x] = tile.at(x * stride + phaseX, y * stride);
                }
            }
            return new Blocks(width, pixels);
        }

        Blocks halved() {
            int half = width / 2;
            int rows = width == 0 ? 0 : means.length / width / 2;
            float[] halved = new float[half * rows];
            for (int y = 0; y < rows; y++) {
                for (int x = 0; x < half; x++) {
                    int i = 2 * y * width + 2 * x;
                    halved[y * half + x] = (means[i] + means[i + 1] + means[i + width] + means[i + width + 1]) / 4;
                }
            }
            return new Blocks(half, halved);
        }

        int addDifferences(float[] into, int from) {
            int count = from;
            for (int i = 2; i < means.length - 2; i++) {
                float d = Math.abs(2 * means[i] - means[i - 2] - means[i + 2]);
                if (d == d && i % width >= 2 && i % width < width - 2) {
                    into[count++] = d;
                }
            }
            return count;
        }
    }
}
