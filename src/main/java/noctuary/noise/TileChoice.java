package noctuary.noise;

import java.util.ArrayList;
import java.util.List;

/** Chooses one tile from each sector of the field, where the background is flattest. */
final class TileChoice {
    private static final int SECTORS_ACROSS = 4;
    private static final int SECTORS_DOWN = 3;

    private final Grid grid;
    private final Lattice lattice;
    private final int across;
    private final int down;

    private TileChoice(Grid grid) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.across = Math.max(1, Math.min(SECTORS_ACROSS, lattice.width() / QuietTile.FILLED));
        this.down = Math.max(1, Math.min(SECTORS_DOWN, lattice.height() / QuietTile.FILLED));
    }

    static List<QuietTile> tiles(Grid grid) {
        return new TileChoice(grid)
                .corners().parallelStream()
                        .map(corner -> new QuietTile(grid, corner[0], corner[1]))
                        .toList();
    }

    private List<int[]> corners() {
        List<int[]> corners = new ArrayList<>();
        for (int row = 0; row < down; row++) {
            for (int column = 0; column < across; column++) {
                corners.add(quietest(column, row));
            }
        }
        return corners;
    }

    private int[] quietest(int column, int row) {
        int left = column * lattice.width() / across / 2 * 2;
        int top = row * lattice.height() / down / 2 * 2;
        int right = Math.max(left, (column + 1) * lattice.width() / across - QuietTile.FILLED);
        int bottom = Math.max(top, (row + 1) * lattice.height() / down - QuietTile.FILLED);
        int[] best = {left, top};
        double least = Double.MAX_VALUE;
        for (int y = top; y <= bottom; y += Lattice.CELL) {
            for (int x = left; x <= right; x += Lattice.CELL) {
                double unrest = unrest(x, y);
                if (unrest < least) {
                    least = unrest;
                    best = new int[] {x, y};
                }
            }
        }
        return best;
    }

    /** Mean of the noise in the tile's cells and of the bends of the background between them. */
    private double unrest(int left, int top) {
        int first = grid.lowerColumn(left);
        int last = Math.min(lattice.columns() - 1, first + QuietTile.FILLED / Lattice.CELL);
        int upper = grid.lowerRow(top);
        int lower = Math.min(lattice.rows() - 1, upper + QuietTile.FILLED / Lattice.CELL);
        double sum = 0;
        for (int row = upper; row <= lower; row++) {
            for (int column = first; column <= last; column++) {
                int cell = row * lattice.columns() + column;
                sum += grid.cellSigma(cell);
                sum += column > first && column < last ? bend(cell, 1) : 0;
                sum += row > upper && row < lower ? bend(cell, lattice.columns()) : 0;
            }
        }
        return sum / ((last - first + 1) * (lower - upper + 1));
    }

    private double bend(int cell, int step) {
        return Math.abs(2 * grid.cellLevel(cell) - grid.cellLevel(cell - step) - grid.cellLevel(cell + step));
    }
}
