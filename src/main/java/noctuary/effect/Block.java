package noctuary.effect;

import java.util.Arrays;

/**
 * A square of background of {@value #SIDE} px.
 *
 * @param free which pixels hold no star light and are not missing, row after row
 * @param level median of the origin over the free pixels
 */
record Block(Tile tile, int left, int top, boolean[] free, double level) {
    static final int SIDE = 32;

    /** Index in the tile of pixel {@code i} of the block. */
    int at(int i) {
        return (top + i / SIDE) * tile.width() + left + i % SIDE;
    }

    /** The same block with other pixels free. */
    Block with(boolean[] others) {
        return new Block(tile, left, top, others, level);
    }

    double freeShare() {
        int count = 0;
        for (boolean each : free) {
            count += each ? 1 : 0;
        }
        return count / (double) free.length;
    }

    /** The free pixels of the block, of a layer of the tile as large as the tile. */
    float[] values(float[] layer) {
        float[] values = new float[SIDE * SIDE];
        int count = 0;
        for (int i = 0; i < free.length; i++) {
            if (free[i]) {
                values[count++] = layer[at(i)];
            }
        }
        return Arrays.copyOf(values, count);
    }
}
