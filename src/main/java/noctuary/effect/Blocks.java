package noctuary.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/** The darkest blocks of the field, which stand for the true background. */
final class Blocks {
    private static final double LEAST_FREE = 0.5;
    private static final double DARKEST = 0.3;
    /** Blocks up to so many sigmas of a pixel above the darkest third count as well. */
    private static final double SIGMAS = 0.25;

    private Blocks() {}

    /** @param masks of star light, one a tile */
    static List<Block> background(List<Tile> tiles, List<boolean[]> masks) {
        List<Block> all = new ArrayList<>();
        for (int t = 0; t < tiles.size(); t++) {
            Tile tile = tiles.get(t);
            for (int y = 0; y + Block.SIDE <= tile.height(); y += Block.SIDE) {
                for (int x = 0; x + Block.SIDE <= tile.width(); x += Block.SIDE) {
                    add(tile, masks.get(t), x, y, all);
                }
            }
        }
        if (all.isEmpty()) {
            return all;
        }
        double dark = Robust.quantile(all.stream().mapToDouble(Block::level).toArray(), DARKEST);
        double noise = Robust.median(all.stream().mapToDouble(Blocks::noise).toArray());
        return all.stream()
                .filter(block -> block.level() <= dark + SIGMAS * noise)
                .sorted(Comparator.comparingInt((Block b) -> b.tile().y() + b.top())
                        .thenComparingInt(b -> b.tile().x() + b.left()))
                .toList();
    }

    private static void add(Tile tile, boolean[] mask, int left, int top, List<Block> all) {
        boolean[] free = new boolean[Block.SIDE * Block.SIDE];
        Block block = new Block(tile, left, top, free, 0);
        int count = 0;
        for (int i = 0; i < free.length; i++) {
            free[i] = !mask[block.at(i)] && !Float.isNaN(tile.origin()[block.at(i)]);
            count += free[i] ? 1 : 0;
        }
        if (count >= LEAST_FREE * free.length) {
            float[] values = block.values(tile.origin());
            all.add(new Block(tile, left, top, free, Selection.median(values, values.length)));
        }
    }

    private static double noise(Block block) {
        float[] values = block.values(block.tile().origin());
        return Selection.sigma(values, values.length, block.level());
    }
}
