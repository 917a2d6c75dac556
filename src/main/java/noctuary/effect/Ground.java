package noctuary.effect;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import noctuary.stars.Star;
import noctuary.stats.Robust;

/**
 * What of the field is free of star light, and its background.
 *
 * @param masks of star light, one a tile
 * @param blocks of background
 * @param smear by how much the picture has its stars wider than the origin, in quadrature, pixels of the picture
 */
record Ground(List<boolean[]> masks, List<Block> blocks, double smear) {
    private static final int FEWEST_BLOCKS = 8;
    /** So many blocks and more can spare the half of them that has more star light. */
    private static final int MANY = 80;
    /** Blocks of empty sky lie up to so many errors of their level above it. */
    private static final double NEAR = 1;
    /** Where no empty sky is found, the darkest of the blocks. */
    private static final double DARKEST = 0.25;

    static Ground of(List<Tile> tiles, List<Star> stars, Laying laying, double fwhm, double smear) {
        List<boolean[]> masks = tiles.stream()
                .map(tile -> StarMask.of(tile, stars, laying, fwhm, smear))
                .toList();
        List<Block> dark = Blocks.background(tiles, masks);
        List<Block> blocks = smear > 0 ? emptiest(dark) : dark;
        return new Ground(masks, smear > 0 && blocks.size() >= MANY ? freer(blocks) : blocks, smear);
    }

    /** Light too faint to be told block by block bends within one, which counts where smoothing leaves little noise. */
    private static List<Block> emptiest(List<Block> blocks) {
        SkyLevel sky = SkyLevel.of(blocks);
        double[] levels = blocks.stream().mapToDouble(Block::level).toArray();
        double end = told(sky) ? sky.level() + NEAR * sky.error() : Robust.quantile(levels, DARKEST);
        List<Block> near = blocks.stream().filter(block -> block.level() <= end).toList();
        return near.size() < FEWEST_BLOCKS ? blocks : near;
    }

    private static boolean told(SkyLevel sky) {
        return Double.isFinite(sky.level());
    }

    /** Whether some of the sky is empty: the levels of its darkest blocks differ by no more than their noise. */
    boolean empty() {
        return told(SkyLevel.of(blocks));
    }

    /** Wide masks leave rags of blocks, on which smoothed noise of many pixels is hard to tell. */
    private static List<Block> freer(List<Block> blocks) {
        double middle =
                Robust.median(blocks.stream().mapToDouble(Block::freeShare).toArray());
        return blocks.stream().filter(block -> block.freeShare() >= middle).toList();
    }

    /** Whether the background tells anything of noise and levels. */
    boolean enough() {
        return blocks.size() >= FEWEST_BLOCKS;
    }

    /** The blocks, none where there are too few. */
    List<Block> background() {
        return enough() ? blocks : List.of();
    }

    Map<Tile, boolean[]> masksOf(List<Tile> tiles) {
        Map<Tile, boolean[]> of = new IdentityHashMap<>();
        for (int t = 0; t < tiles.size(); t++) {
            of.put(tiles.get(t), masks.get(t));
        }
        return of;
    }

    DarkSky dark() {
        return enough() ? DarkSky.of(blocks) : new DarkSky(0, 0, 0, List.of());
    }
}
