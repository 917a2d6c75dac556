package noctuary.effect;

import java.util.ArrayList;
import java.util.List;

/** A small square of both pictures, about a star or on the sky, row after row. */
record Patch(float[] origin, float[] picture) {
    /** Farthest ring that a pixel is held against. */
    static final int RINGS = 8;
    /** Pixels so far from the middle are held against their surroundings. */
    static final int INNER = 6;

    static final int REACH = INNER + RINGS;
    static final int SIDE = 2 * REACH + 1;
    private static final int MOST_STARS = 60;
    private static final double CLEAR = 0.97;

    /** About the highest pixels of cells with stars. */
    static List<Patch> stars(List<Tile> tiles) {
        List<Patch> patches = new ArrayList<>();
        for (CellChoice.Place place : CellChoice.stars(tiles, Block.SIDE)) {
            if (patches.size() < MOST_STARS) {
                add(place.tile(), place.x() + Block.SIDE / 2, place.y() + Block.SIDE / 2, patches);
            }
        }
        return patches;
    }

    /** In the middle of at most so many blocks of background without stars, evenly taken. */
    static List<Patch> sky(List<Block> background, int most) {
        List<Block> clear =
                background.stream().filter(block -> block.freeShare() > CLEAR).toList();
        List<Patch> patches = new ArrayList<>();
        int take = Math.min(most, clear.size());
        for (int k = 0; k < take; k++) {
            Block block = clear.get((int) ((long) k * clear.size() / take));
            add(block.tile(), block.left() + Block.SIDE / 2, block.top() + Block.SIDE / 2, patches);
        }
        return patches;
    }

    private static void add(Tile tile, int x, int y, List<Patch> patches) {
        if (x < REACH || y < REACH || x + REACH >= tile.width() || y + REACH >= tile.height()) {
            return;
        }
        float[] origin = new float[SIDE * SIDE];
        float[] picture = new float[SIDE * SIDE];
        for (int i = 0; i < origin.length; i++) {
            int at = (y - REACH + i / SIDE) * tile.width() + x - REACH + i % SIDE;
            origin[i] = tile.origin()[at];
            picture[i] = tile.picture()[at];
            if (Float.isNaN(origin[i]) || picture[i] <= 0 || picture[i] >= 1) {
                return;
            }
        }
        patches.add(new Patch(origin, picture));
    }
}
