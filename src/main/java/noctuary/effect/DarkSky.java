package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import noctuary.stats.Selection;

/**
 * What the picture made of the true background.
 *
 * @param cutPercent share of its pixels that are black now, in any colour
 * @param mainCutPercent share that is black on the plane that noise is compared on
 * @param doubtPercent by which {@code cutPercent} may be too little where faint light lies all over
 * @param castPercent by which each of red, green and blue stands above the mean of the three; empty for grey, or where
 *     the background is black
 */
record DarkSky(double cutPercent, double mainCutPercent, double doubtPercent, List<Double> castPercent) {
    static final String UNSETTLED =
            "faint light lies over all of the field, and how much of the sky below it is black depends on how much";

    /** Least that tells. */
    private static final double LEAST_DOUBT_PERCENT = 0.1;

    private static final double MOST_CUT_PERCENT = 40;

    static DarkSky of(List<Block> blocks) {
        double[] level = blocks.stream().mapToDouble(Block::level).toArray();
        double[] cut = new double[level.length];
        double[] mainCut = new double[level.length];
        for (int k = 0; k < level.length; k++) {
            count(blocks.get(k), k, cut, mainCut);
        }
        SkyLevel sky = SkyLevel.of(blocks);
        boolean colour = !blocks.isEmpty() && blocks.get(0).tile().colours().length == 3;
        double main = 100 * sky.at(level, mainCut);
        return new DarkSky(
                100 * sky.at(level, cut),
                main,
                100 * sky.doubt(level, cut),
                colour && main < MOST_CUT_PERCENT ? cast(blocks) : List.of());
    }

    /** Whether light that lies all over may hide what is cut. */
    boolean unsettled() {
        return doubtPercent > LEAST_DOUBT_PERCENT;
    }

    private static void count(Block block, int k, double[] cut, double[] mainCut) {
        int all = 0;
        for (int i = 0; i < block.free().length; i++) {
            if (block.free()[i]) {
                all++;
                mainCut[k] += block.tile().picture()[block.at(i)] <= 0 ? 1 : 0;
                cut[k] += black(block.tile(), block.at(i)) ? 1 : 0;
            }
        }
        mainCut[k] /= all;
        cut[k] /= all;
    }

    private static boolean black(Tile tile, int at) {
        if (tile.colours().length == 0) {
            return tile.picture()[at] <= 0;
        }
        boolean black = false;
        for (float[] colour : tile.colours()) {
            black |= colour[at] <= 0;
        }
        return black;
    }

    private static List<Double> cast(List<Block> blocks) {
        double[] level = new double[3];
        double mean = 0;
        for (int c = 0; c < 3; c++) {
            level[c] = level(blocks, c);
            mean += level[c] / 3;
        }
        List<Double> cast = new ArrayList<>();
        for (double each : level) {
            cast.add(100 * (each / mean - 1));
        }
        return cast;
    }

    /** Median over the pixels of all blocks; eight-bit steps are smoothed over. */
    private static double level(List<Block> blocks, int colour) {
        float[] values = new float[blocks.size() * Block.SIDE * Block.SIDE];
        int count = 0;
        for (Block block : blocks) {
            float[] free = block.values(block.tile().colours()[colour]);
            System.arraycopy(free, 0, values, count, free.length);
            count += free.length;
        }
        return Selection.medianOfSteps(values, count);
    }
}
