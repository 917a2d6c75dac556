package noctuary.noise;

import java.util.ArrayList;
import java.util.List;
import noctuary.noise.Surface.Patch;
import noctuary.stats.Robust;

/** The cells of a grid gathered to at most {@value #MOST} x {@value #MOST} patches, each the median of its cells. */
final class Patches {
    static final int MOST = 20;

    private Patches() {}

    /** Those with pixels of their own, NaN for the others; row after row, {@link #columns} a row. */
    static List<Patch> of(Grid grid) {
        Lattice lattice = grid.lattice();
        int columns = columns(lattice);
        int rows = rows(lattice);
        List<Patch> patches = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                patches.add(patch(grid, column, columns, row, rows));
            }
        }
        return patches;
    }

    static int columns(Lattice lattice) {
        return Math.min(MOST, lattice.columns());
    }

    static int rows(Lattice lattice) {
        return Math.min(MOST, lattice.rows());
    }

    private static Patch patch(Grid grid, int column, int columns, int row, int rows) {
        Lattice lattice = grid.lattice();
        List<Double> levels = new ArrayList<>();
        int cells = 0;
        double x = 0;
        double y = 0;
        for (int r = row * lattice.rows() / rows; r < (row + 1) * lattice.rows() / rows; r++) {
            for (int c = column * lattice.columns() / columns; c < (column + 1) * lattice.columns() / columns; c++) {
                int cell = r * lattice.columns() + c;
                if (grid.present()[cell]) {
                    levels.add(grid.cellLevel(cell));
                }
                x += lattice.middleX(c);
                y += lattice.middleY(r);
                cells++;
            }
        }
        double level =
                Robust.median(levels.stream().mapToDouble(Double::doubleValue).toArray());
        double u = 2 * (x / cells + 0.5) / lattice.width() - 1;
        double v = 2 * (y / cells + 0.5) / lattice.height() - 1;
        return new Patch(u, v, level);
    }
}
