package noctuary.effect;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import noctuary.stats.Robust;

/**
 * Noise of one layer over the background: medians over blocks, so that a star too faint to be found moves nothing. The
 * plane taken off each block takes noise with it, more the longer the noise correlates; that is given back, as much as
 * it would be of white noise under the Gaussian that fits the noise at 4 and 8 px.
 */
final class BackgroundNoise {
    static final int LARGEST = 8;
    private static final double MOST_SIGMA = 4;
    private static final int HALVINGS = 20;
    private static final double MOST_LOST = 0.8;
    private static final double LEANING = 0.9;

    private final List<BlockResidual> residuals;
    private final double pixels;
    private final double smoothing;
    /** Variance of means over many pixels, over that of means over 8 px, each times their pixels: below 1 where sharpened. */
    private final double slower;

    /** @param layers by tile */
    BackgroundNoise(List<Block> blocks, Map<Tile, float[]> layers) {
        this.residuals = blocks.stream()
                .map(block -> BlockResidual.of(block, layers.get(block.tile())))
                .toList();
        this.pixels = Block.SIDE
                * Block.SIDE
                * Robust.median(blocks.stream().mapToDouble(Block::freeShare).toArray());
        this.smoothing = smoothing();
        this.slower = smoothing > 0 ? 1 : slower();
    }

    /** Standard deviation of means of {@code size} x {@code size} px; NaN when it cannot be told. */
    double sigma(int size) {
        return Math.sqrt(median(r -> r.variance(size)) / kept(size));
    }

    /** As {@link #sigma} of one pixel, from the upper half of the values alone. */
    double upperSigma() {
        return Math.sqrt(median(BlockResidual::upperVariance) / kept(smoothing, 1));
    }

    /**
     * Whether its upper half spreads so much less than all of it, as under a stretch that bends within the noise, that what
     * is known of steps on Gaussian noise does not hold for it.
     */
    boolean leans() {
        return upperSigma() < LEANING * sigma(1);
    }

    /** Of the Gaussian that would give this ratio of the variances at 8 and 4 px; 0 for white noise and sharper. */
    private double smoothing() {
        double found = median(r -> r.variance(LARGEST)) / median(r -> r.variance(LARGEST / 2));
        double low = 0;
        double high = MOST_SIGMA;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            boolean more = ratio(middle) < found;
            low = more ? middle : low;
            high = more ? high : middle;
        }
        return ratio(0) < found ? low : 0;
    }

    /** With size n, the deviation of means times n runs as 1 + b / n where sharpening added to it. */
    private double slower() {
        double eight = LARGEST * Math.sqrt(median(r -> r.variance(LARGEST)) / kept(0, LARGEST));
        double four = LARGEST / 2 * Math.sqrt(median(r -> r.variance(LARGEST / 2)) / kept(0, LARGEST / 2));
        double many = Math.max(0, 2 * eight - four);
        return Math.min(1, many * many / (eight * eight));
    }

    private double ratio(double sigma) {
        return PlaneLoss.ofMeans(sigma, LARGEST)
                * kept(sigma, LARGEST)
                / PlaneLoss.ofMeans(sigma, LARGEST / 2)
                / kept(sigma, LARGEST / 2);
    }

    double kept(int size) {
        double kept = kept(smoothing, size);
        return size == LARGEST ? 1 - slower * (1 - kept) : kept;
    }

    /** A block with fewer free pixels loses more. */
    private double kept(double sigma, int size) {
        double lost = (1 - PlaneLoss.kept(sigma, size)) * Block.SIDE * Block.SIDE / pixels;
        return 1 - Math.min(MOST_LOST, lost);
    }

    /** Correlation of a pixel with its neighbour: 0 for white noise. */
    double neighbourCorrelation() {
        double found = median(BlockResidual::neighbourCorrelation);
        double kept = kept(smoothing, 1);
        return found * kept + 1 - kept;
    }

    /** Noise of means of 8 px over what it would be if neighbours were independent. */
    double blotch() {
        return LARGEST * sigma(LARGEST) / sigma(1);
    }

    private double median(ToDoubleFunction<BlockResidual> of) {
        return Robust.median(
                residuals.stream().mapToDouble(of).filter(Double::isFinite).toArray());
    }
}
