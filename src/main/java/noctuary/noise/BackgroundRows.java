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
        int below = Math.min(cellRow + 1, lattice.rows() - 1);
        for (int parity = 0; parity < lattice.stride(); parity++) {
            for (int i = 0; i < upper[parity].length; i++) {
                int x = left + i;
                float[] phase = grid.level()[parity * lattice.stride() + x % lattice.stride()];
                int column = grid.lowerColumn(x);
                float top = across(phase, cellRow, column, x);
                upper[parity][i] = top;
                change[parity][i] = across(phase, below, column, x) - top;
            }
        }
        expanded = cellRow;
    }

    private float across(float[] phase, int cellRow, int column, int x) {
        int at = cellRow * lattice.columns() + column;
        if (lattice.columns() == 1) {
            return phase[at];
        }
        double from = lattice.middleX(column);
        double t = (x - from) / (lattice.middleX(column + 1) - from);
        return (float) (phase[at] + t * (phase[at + 1] - phase[at]));
    }
}
