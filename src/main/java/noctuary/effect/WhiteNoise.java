package noctuary.effect;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * The noise of a picture whose origin has white noise. What follows from the origin by a kernel is taken off, and with it
 * faint light that lies all over the sky, which smoothing leaves where it takes noise; in its place comes what that
 * kernel makes of white noise.
 */
final class WhiteNoise {
    /** Pixels so far from star light are looked at: smoothing brings little of it there. */
    private static final int CLEAR = 5;

    private static final int MOST_BLOCKS = 150;
    private static final int FEWEST_BLOCKS = 8;
    private static final double LEAST_CLEAR = 0.2;
    /** Most correlation of neighbours in white noise; faint light of a tenth of the noise stays below it. */
    private static final double WHITE = 0.02;
    /** Most noise of means over 8 px, as a share of what it is in white noise. */
    private static final double EVEN = 1.05;

    /** Medians of how far blocks lie off, beyond which one counts none: ten standard deviations. */
    private static final double FAR = 7;

    /** Most of a kernel on its outermost rings when it is believed. */
    private static final double OUTER = 0.1;

    /** Least that a stretch must be off before it is said to be. */
    private static final double NEAR = 0.03;

    private static final double ERRORS = 4;
    /** Most error of the kernel's sum, as a share of it, when that is believed. */
    private static final double MOST_ERROR = 0.04;

    private final List<RingSums> sums;
    private final RoundKernel kernel;
    private final BackgroundNoise before;
    private final BackgroundNoise after;
    private final boolean leans;

    private WhiteNoise(List<RingSums> sums, Layers layers) {
        this.sums = sums;
        this.kernel = RoundKernel.of(sums);
        List<Block> blocks = sums.stream().map(RingSums::block).toList();
        this.before = new BackgroundNoise(blocks, layers.stretched());
        this.after = new BackgroundNoise(blocks, layers.shown());
        this.leans = new BackgroundNoise(blocks, Layers.origin(layers.tiles())).leans();
    }

    /**
     * @param before noise of the origin under the stretch
     * @return nothing where that is not white, or too little of the sky is clear of stars
     */
    static Optional<WhiteNoise> of(Ground ground, Layers layers, BackgroundNoise before) {
        if (!(Math.abs(before.neighbourCorrelation()) < WHITE && before.blotch() < EVEN)) {
            return Optional.empty();
        }
        Map<Tile, boolean[]> masks = ground.masksOf(layers.tiles());
        List<Block> blocks = ground.blocks();
        int take = Math.min(MOST_BLOCKS, blocks.size());
        List<RingSums> sums = IntStream.range(0, take)
                .parallel()
                .mapToObj(k -> blocks.get((int) ((long) k * blocks.size() / take)))
                .map(block -> clear(block, layers, masks.get(block.tile())))
                .flatMap(Optional::stream)
                .toList();
        return sums.size() < FEWEST_BLOCKS
                ? Optional.empty()
                : Optional.of(new WhiteNoise(sums, layers)).filter(white -> white.kernel.outer() < OUTER);
    }

    private static Optional<RingSums> clear(Block block, Layers layers, boolean[] mask) {
        Surround around = Surround.of(block, layers.stretched().get(block.tile()), mask);
        Block clear = block.with(around.clear(CLEAR));
        return clear.freeShare() < LEAST_CLEAR
                ? Optional.empty()
                : Optional.of(RingSums.of(clear, around, layers.shown().get(block.tile())));
    }

    /**
     * Standard deviation of means over {@code size} x {@code size} px, after over before; nothing where too few blocks have
     * squares of that size.
     */
    Optional<Double> ratio(int size) {
        List<RingSums> told = sums.stream()
                .filter(block -> Double.isFinite(block.rest(kernel, size)))
                .toList();
        double one = before.sigma(1) / size;
        double ratio =
                Math.sqrt(rest(told, size) / after.kept(size) / (one * one) + size * size * kernel.ofWhite(size));
        return told.size() < FEWEST_BLOCKS || Double.isNaN(ratio) ? Optional.empty() : Optional.of(ratio);
    }

    /** Mean over all squares of that size; blocks that are far off, as under a star too faint to be found, count none. */
    private double rest(List<RingSums> told, int size) {
        double[] rests =
                told.stream().mapToDouble(block -> block.rest(kernel, size)).toArray();
        double middle = Robust.median(rests);
        double[] off = IntStream.range(0, rests.length)
                .mapToDouble(
                        k -> Math.abs(rests[k] - middle) * Math.sqrt(told.get(k).squares(size)))
                .toArray();
        double most = FAR * Robust.median(off);
        double sum = 0;
        double count = 0;
        for (int k = 0; k < rests.length; k++) {
            double squares = off[k] <= most ? told.get(k).squares(size) : 0;
            sum += squares * rests[k];
            count += squares;
        }
        return sum / count;
    }

    /** As {@link BackgroundNoise#blotch}, of the picture. */
    Optional<Double> blotch() {
        return ratio(BackgroundNoise.LARGEST).flatMap(many -> ratio(1).map(one -> many / one));
    }

    /**
     * By how much the picture's noise stands higher than under the stretch as found.
     *
     * @param found the same by {@link SkySlope}, 1 where the stretch holds
     * @param known whether that is nearer than this kernel's sum can be
     */
    double gain(double found, boolean known) {
        if (known || leans) {
            return found;
        }
        double error = kernel.gainError() / kernel.gain();
        boolean holds = found == 1 && Math.abs(kernel.gain() - 1) < Math.max(NEAR, ERRORS * error);
        return holds || !(error > 0 && error < MOST_ERROR) ? found : kernel.gain();
    }
}
