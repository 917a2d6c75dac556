package noctuary.stars;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/**
 * Remembers a slow function of the place for the row of blocks asked for last; a block is twice as wide as high. For
 * one thread.
 */
final class BlockMap {
    private final int block;
    private final DoubleBinaryOperator function;
    private int row = Integer.MIN_VALUE;
    private float[] values = new float[0];
    private boolean[] known = new boolean[0];

    BlockMap(int block, DoubleBinaryOperator function) {
        this.block = block;
        this.function = function;
    }

    /** The first column after the block of column x. */
    int end(int x) {
        return (Math.floorDiv(x, 2 * block) + 1) * 2 * block;
    }

    /** The value in the middle of the block that holds (x, y). */
    float at(int x, int y) {
        int column = Math.floorDiv(x, 2 * block) + 8;
        int top = Math.floorDiv(y, block) * block;
        if (top != row) {
            row = top;
            Arrays.fill(known, false);
        }
        if (column >= known.length) {
            known = Arrays.copyOf(known, column + 64);
            values = Arrays.copyOf(values, column + 64);
        }
        if (!known[column]) {
            known[column] = true;
            values[column] = (float) function.applyAsDouble((2 * (column - 8) + 1) * block, top + block / 2.0);
        }
        return values[column];
    }
}
