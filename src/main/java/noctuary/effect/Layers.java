package noctuary.effect;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The pictures as compared, by tile: the origin under the stretch found, and the picture, both as shares of white.
 * Tiles are told apart by identity.
 *
 * @param endless as stretched, but below zero where the picture is cut to black
 */
record Layers(List<Tile> tiles, Map<Tile, float[]> stretched, Map<Tile, float[]> endless, Map<Tile, float[]> shown) {
    static Layers of(List<Tile> tiles, Transfer transfer) {
        Map<Tile, float[]> stretched = new IdentityHashMap<>();
        Map<Tile, float[]> endless = new IdentityHashMap<>();
        Map<Tile, float[]> shown = new IdentityHashMap<>();
        for (Tile tile : tiles) {
            stretched.put(tile, transfer.forward(tile.origin()));
            endless.put(tile, transfer.endless(tile.origin()));
            shown.put(tile, tile.picture());
        }
        return new Layers(tiles, stretched, endless, shown);
    }
}
