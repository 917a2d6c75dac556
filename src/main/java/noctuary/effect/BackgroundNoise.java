package noctuary.effect;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import noctuary.stats.Robust;

/**
 * Noise of one layer over the background: medians over blocks, so that a star too faint to be found moves nothing. The
 * plane taken off each block takes three degrees of freedom with it, which weigh more the longer the noise correlates;
 * that is given back.
 */
final class BackgroundNoise {
    private static final int LARGEST = 8;
    private static final int PLANE = 3;

    private final List<BlockResidual> residuals;
    /** Variance of means of 8 px over what a pixel's would make it: 1 for white noise. */
    private final double correlated;

    /** @param layers by tile */
    BackgroundNoise(List<Block> blocks, Map<Tile, float[]> layers) {
        this.residuals = blocks.stream()
                .map(block -> BlockResidual.of(block, layers.get(block.tile())))
                .toList();
        double eight = median(r -> r.variance(LARGEST)) / (1 - PLANE * LARGEST * LARGEST / pixels());
        this.correlated = Math.max(1, LARGEST * LARGEST * eight / median(r -> r.variance(1)));
    }

    /** Standard deviation of means of {@code size} x {@code size} px; NaN when it cannot be told. */
    double sigma(int size) {
        return Math.sqrt(median(r -> r.variance(size)) / (1 - lost(size)));
    }

    /** As {@link #sigma} of one pixel, from the upper half of the values alone. */
    double upperSigma() {
        return Math.sqrt(median(BlockResidual::upperVariance) / (1 - lost(1)));
    }

    /** Share of the variance that went with the plane. */
    private double lost(int size) {
        return Math.min(0.5, PLANE * Math.max(size * size, Math.min(correlated, LARGEST * LARGEST)) / pixels());
    }

    /** Correlation of a pixel with its neighbour: 0 for white noise. */
    double neighbourCorrelation() {
        double found = median(BlockResidual::neighbourCorrelation);
        return found * (1 - lost(1)) + lost(1);
    }

    /** Noise of means of 8 px over what it would be if neighbours were independent. */
    double blotch() {
        return LARGEST * sigma(LARGEST) / sigma(1);
    }

    private double pixels() {
        return Robust.median(
                residuals.stream().mapToDouble(BlockResidual::count).toArray());
    }

    private double median(ToDoubleFunction<BlockResidual> of) {
        return Robust.median(
                residuals.stream().mapToDouble(of).filter(Double::isFinite).toArray());
    }
}
