package noctuary.noise;

/** The background of rows or a part of them, expanded once for each row of cells and then blended down the rows. */
final class BackgroundRows {
    private final Grid grid;
    private final Lattice lattice;
    private final float[][] upper;
    private final float[][] change;
    private final int left;
    private int expanded = -1;

    /** For the columns from {@code left} on. */
    BackgroundRows(Grid grid, int left, int width) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.left = left;
        this.upper = new float[lattice.stride()][width];
        this.change = new float[lattice.stride()][width];
    }

    /** {@code residual} becomes {@code line}, which is (part of) row {@code y}, without its background. */
    void subtract(int y, float[] line, float[] residual) {
        int cellRow = grid.lowerRow(y);
        if (cellRow != expanded) {
            expand(cellRow);
        }
        double from = lattice.middleY(cellRow);
        float t = lattice.rows() == 1 ? 0 : (float) ((y - from) / (lattice.middleY(cellRow + 1) - from));
        float[] base = upper[y % lattice.stride()];
        float[] slope = change[y % lattice.stride()];
        for (int x = 0; x < base.length; x++) {
            residual[x] = line[x] - (base[x] + t * slope[x]);
        }
    }

    private void expand(int cellRow) {
        int width = upper[0].length;
        int column = grid.lowerColumn(left);
        for (int from = 0, to; from < width; from = to, column++) {
            boolean last = column >= lattice.columns() - 2;
            to = last ? width : Math.min(width, (int) Math.ceil(lattice.middleX(column + 1)) - left);
            expand(cellRow, column, from, to);
        }
        expanded = cellRow;
    }

    /** The places {@code from} to {@code to}, which lie between the middles of this column of cells and the next. */
    private void expand(int cellRow, int column, int from, int to) {
        int at = cellRow * lattice.columns() + column;
        int below = cellRow + 1 < lattice.rows() ? at + lattice.columns() : at;
        int right = lattice.columns() == 1 ? 0 : 1;
        double middle = lattice.middleX(column) - left;
        double scale = right == 0 ? 0 : 1 / (lattice.middleX(column + 1) - lattice.middleX(column));
        int stride = lattice.stride();
        for (int parity = 0; parity < stride; parity++) {
            for (int i = from; i < Math.min(to, from + stride); i++) {
                float[] phase = grid.level()[parity * stride + (left + i) % stride];
                blend(upper[parity], i, to, phase[at], phase[at + right] - phase[at], middle, scale);
                blend(change[parity], i, to, phase[below], phase[below + right] - phase[below], middle, scale);
                for (int k = i; k < to; k += stride) {
                    change[parity][k] -= upper[parity][k];
                }
            }
        }
    }

    /** Every {@code stride}th place from {@code from} on. */
    private void blend(float[] into, int from, int to, float level, float slope, double middle, double scale) {
        for (int i = from, stride = lattice.stride(); i < to; i += stride) {
            into[i] = (float) (level + (i - middle) * scale * slope);
        }
    }
}
