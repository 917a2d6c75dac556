package noctuary.effect;

import java.util.Arrays;

/** The median over a square of the origin, as if a step had smoothed it so before the stretch. */
final class MedianOf {
    /** Squares that are tried: 3 and 5 px. */
    private static final int[] REACHES = {1, 2};
    /** Farthest that the noise left may lie from what such a median leaves. */
    private static final double NEAR = 0.2;

    private MedianOf() {}

    /** The reach of the median that leaves about this share of white noise: √(π / 2n) for n values; 0 for none. */
    static int reach(double noiseRatio) {
        for (int reach : REACHES) {
            int side = 2 * reach + 1;
            if (Math.abs(noiseRatio / Math.sqrt(Math.PI / 2 / (side * side)) - 1) < NEAR) {
                return reach;
            }
        }
        return 0;
    }

    /** NaN within reach of an edge of the tile or of a missing pixel. */
    static float at(Tile tile, int index, int reach) {
        int x = index % tile.width();
        int y = index / tile.width();
        if (x < reach || y < reach || x >= tile.width() - reach || y >= tile.height() - reach) {
            return Float.NaN;
        }
        int side = 2 * reach + 1;
        float[] box = new float[side * side];
        for (int i = 0; i < box.length; i++) {
            box[i] = tile.origin()[index + (i / side - reach) * tile.width() + i % side - reach];
        }
        Arrays.sort(box);
        return Float.isNaN(box[box.length - 1]) ? Float.NaN : box[box.length / 2];
    }
}
