package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The level of the sky without any light in it: where the lower flank of the blocks' levels lies when its width is that
 * of their noise. The rim of a nebula, too faint to be told block by block, then lifts nothing.
 *
 * @param level NaN where the levels differ by more than their noise
 * @param error of one block's level
 */
record SkyLevel(double level, double error) {
    /** Standard error of a median over that of a mean, of Gaussian noise: the root of half of pi. */
    private static final double OF_MEDIAN = Math.sqrt(Math.PI / 2);
    /** The flank ends so many errors above the level. */
    private static final double FLANK = 0.5;
    /** By so much the mean of what is below that end lies below the level: normal density over distribution at 0.5. */
    private static final double BELOW = 0.35206532676 / 0.69146246127;

    private static final int ROUNDS = 60;
    /** Fewest blocks below the level, as a share of all. */
    private static final double FEWEST = 0.15;

    private static final int LARGEST = 8;
    private static final double NEAR = 3;

    static SkyLevel of(List<Block> blocks) {
        if (blocks.isEmpty()) {
            return new SkyLevel(Double.NaN, 0);
        }
        double[] levels = blocks.stream().mapToDouble(Block::level).sorted().toArray();
        double pixels = blocks.stream().mapToDouble(Block::freeShare).average().orElse(1) * Block.SIDE * Block.SIDE;
        List<Tile> tiles = blocks.stream().map(Block::tile).distinct().toList();
        double noise = new BackgroundNoise(blocks, Layers.origin(tiles)).sigma(LARGEST);
        double error = OF_MEDIAN * noise * LARGEST / Math.sqrt(pixels);
        double level = levels[levels.length / 3];
        for (int round = 0; round < ROUNDS; round++) {
            double end = Math.max(level + FLANK * error, levels[0]);
            level = Arrays.stream(levels).filter(l -> l <= end).average().orElse(level) + BELOW * error;
        }
        double found = level;
        long below = Arrays.stream(levels).filter(l -> l < found).count();
        return new SkyLevel(below >= FEWEST * levels.length ? level : Double.NaN, error);
    }

    /** By how much a quantity may be another at the sky than {@link #at} says: 0 where the level is known. */
    double doubt(double[] levels, double[] quantity) {
        if (Double.isFinite(level)) {
            return 0;
        }
        double[] line = line(IntStream.range(0, levels.length).toArray(), levels, quantity);
        return Math.abs(line[2] * (line[0] - Arrays.stream(levels).min().orElse(line[0])));
    }

    /** What a quantity of blocks is at the level of the sky: along the straight line through the blocks near it. */
    double at(double[] levels, double[] quantity) {
        int[] near = IntStream.range(0, levels.length)
                .filter(k -> !(levels[k] > level + NEAR * error))
                .toArray();
        double[] line = line(near, levels, quantity);
        boolean told = Double.isFinite(level) && Double.isFinite(line[2]);
        return Math.max(0, told ? line[1] + line[2] * (level - line[0]) : line[1]);
    }

    /** Mean level, mean quantity and how steeply that follows the level, NaN where all levels are one. */
    private static double[] line(int[] blocks, double[] levels, double[] quantity) {
        double meanX =
                Arrays.stream(blocks).mapToDouble(k -> levels[k]).average().orElse(0);
        double meanY =
                Arrays.stream(blocks).mapToDouble(k -> quantity[k]).average().orElse(0);
        double xy = 0;
        double xx = 0;
        for (int k : blocks) {
            xy += (levels[k] - meanX) * (quantity[k] - meanY);
            xx += (levels[k] - meanX) * (levels[k] - meanX);
        }
        return new double[] {meanX, meanY, xx > 0 ? xy / xx : Double.NaN};
    }
}
