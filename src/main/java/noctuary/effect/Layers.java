package noctuary.effect;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The pictures as compared, by tile: the origin under the stretch found, and the picture, both as shares of white.
 * Tiles are told apart by identity.
 *
 * @param endless as stretched, but below zero where the picture is cut to black
 */
record Layers(List<Tile> tiles, Map<Tile, float[]> stretched, Map<Tile, float[]> endless, Map<Tile, float[]> shown) {
    static Map<Tile, float[]> origin(List<Tile> tiles) {
        return each(tiles, Tile::origin);
    }

    static Map<Tile, float[]> picture(List<Tile> tiles) {
        return each(tiles, Tile::picture);
    }

    static Map<Tile, float[]> forward(List<Tile> tiles, Transfer transfer) {
        return each(tiles, tile -> transfer.forward(tile.origin()));
    }

    /** The picture minus the origin {@link #endless} under the stretch. */
    Map<Tile, float[]> change() {
        return each(tiles, tile -> {
            float[] change = shown.get(tile).clone();
            float[] before = endless.get(tile);
            for (int i = 0; i < change.length; i++) {
                change[i] -= before[i];
            }
            return change;
        });
    }

    private static Map<Tile, float[]> each(List<Tile> tiles, Function<Tile, float[]> of) {
        Map<Tile, float[]> layers = new IdentityHashMap<>();
        tiles.forEach(tile -> layers.put(tile, of.apply(tile)));
        return layers;
    }

    static Layers of(List<Tile> tiles, Transfer transfer) {
        return new Layers(
                tiles, forward(tiles, transfer), each(tiles, tile -> transfer.endless(tile.origin())), picture(tiles));
    }
}
