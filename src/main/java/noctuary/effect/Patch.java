package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
    private static final double LITTLE_CUT = 0.03;

    /** About the highest pixels of cells with stars. */
    static List<Patch> stars(List<Tile> tiles) {
        List<Patch> patches = new ArrayList<>();
        for (CellChoice.Place place : CellChoice.stars(tiles, Block.SIDE)) {
            if (patches.size() < MOST_STARS) {
                at(place.tile(), place.x() + Block.SIDE / 2, place.y() + Block.SIDE / 2)
                        .filter(patch -> patch.cut() == 0)
                        .ifPresent(patches::add);
            }
        }
        return patches;
    }

    /** In the middle of at most so many blocks of background without stars, evenly taken, where nothing is cut. */
    static List<Patch> sky(List<Block> background, int most) {
        return whole(all(background, most));
    }

    /** The same with what is black, where that is so little that it bends nothing about the sky. */
    static List<Patch> skyAndCut(List<Block> background, int most) {
        List<Patch> all = all(background, most);
        double cut = all.stream().mapToInt(Patch::cut).average().orElse(0) / (SIDE * SIDE);
        return cut < LITTLE_CUT ? all : whole(all);
    }

    private static List<Patch> whole(List<Patch> patches) {
        return patches.stream().filter(patch -> patch.cut() == 0).toList();
    }

    private static List<Patch> all(List<Block> background, int most) {
        List<Block> clear =
                background.stream().filter(block -> block.freeShare() > CLEAR).toList();
        List<Patch> patches = new ArrayList<>();
        int take = Math.min(most, clear.size());
        for (int k = 0; k < take; k++) {
            Block block = clear.get((int) ((long) k * clear.size() / take));
            at(block.tile(), block.left() + Block.SIDE / 2, block.top() + Block.SIDE / 2)
                    .ifPresent(patches::add);
        }
        return patches;
    }

    /** Nothing at the edge of the tile or where pixels are missing. */
    private static Optional<Patch> at(Tile tile, int x, int y) {
        if (x < REACH || y < REACH || x + REACH >= tile.width() || y + REACH >= tile.height()) {
            return Optional.empty();
        }
        float[] origin = new float[SIDE * SIDE];
        float[] picture = new float[SIDE * SIDE];
        for (int i = 0; i < origin.length; i++) {
            int at = (y - REACH + i / SIDE) * tile.width() + x - REACH + i % SIDE;
            origin[i] = tile.origin()[at];
            picture[i] = tile.picture()[at];
            if (Float.isNaN(origin[i])) {
                return Optional.empty();
            }
        }
        return Optional.of(new Patch(origin, picture));
    }

    /** How many of the picture's pixels are black or white. */
    private int cut() {
        int cut = 0;
        for (float value : picture) {
            cut += value <= 0 || value >= 1 ? 1 : 0;
        }
        return cut;
    }
}
