package noctuary.effect;

/**
 * A block of a layer with the pixels around it, less the block's plane; zero where there is star light or nothing.
 *
 * @param values square of {@value #SIDE} px, row after row
 * @param free which of them count
 */
record Surround(double[] values, boolean[] free) {
    static final int REACH = 8;
    static final int SIDE = Block.SIDE + 2 * REACH;

    /**
     * @param layer of the block's tile
     * @param mask of star light on that tile
     */
    static Surround of(Block block, float[] layer, boolean[] mask) {
        double[] inside = new double[Block.SIDE * Block.SIDE];
        for (int i = 0; i < inside.length; i++) {
            inside[i] = layer[block.at(i)];
        }
        Slant slant = Slant.of(inside, block.free());
        double[] values = new double[SIDE * SIDE];
        boolean[] free = new boolean[SIDE * SIDE];
        Tile tile = block.tile();
        for (int i = 0; i < values.length; i++) {
            int x = i % SIDE - REACH;
            int y = i / SIDE - REACH;
            int at = tile.indexOf(tile.x() + block.left() + x, tile.y() + block.top() + y);
            free[i] = at >= 0 && !mask[at] && !Float.isNaN(layer[at]);
            values[i] = free[i] ? layer[at] - slant.at(x, y) : 0;
        }
        return new Surround(values, free);
    }

    /** Where pixel {@code i} of the block stands in the square. */
    static int at(int i) {
        return (REACH + i / Block.SIDE) * SIDE + REACH + i % Block.SIDE;
    }

    /** The block's pixels that have none but free ones within {@code reach} px. */
    boolean[] clear(int reach) {
        boolean[] clear = new boolean[Block.SIDE * Block.SIDE];
        for (int i = 0; i < clear.length; i++) {
            clear[i] = clear(at(i), reach);
        }
        return clear;
    }

    private boolean clear(int at, int reach) {
        for (int dy = -reach; dy <= reach; dy++) {
            for (int dx = -reach; dx <= reach; dx++) {
                if (!free[at + dy * SIDE + dx] && dx * dx + dy * dy <= reach * reach) {
                    return false;
                }
            }
        }
        return true;
    }
}
