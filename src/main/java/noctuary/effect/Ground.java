package noctuary.effect;

import java.util.List;
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

    static Ground of(List<Tile> tiles, List<Star> stars, Laying laying, double fwhm, double smear) {
        List<boolean[]> masks = tiles.stream()
                .map(tile -> StarMask.of(tile, stars, laying, fwhm, smear))
                .toList();
        List<Block> blocks = Blocks.background(tiles, masks);
        return new Ground(masks, smear > 0 && blocks.size() >= MANY ? freer(blocks) : blocks, smear);
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

    DarkSky dark() {
        return enough() ? DarkSky.of(blocks) : new DarkSky(0, 0, List.of());
    }
}
