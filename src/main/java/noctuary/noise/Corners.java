package noctuary.noise;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.noise.Shading.Corner;
import noctuary.noise.Surface.Patch;
import noctuary.stats.Robust;

/** Compares each corner of a frame with the smooth field and with the other three corners. */
final class Corners {
    private static final double LEAST_SCATTERS = 6;
    private static final double LEAST_SIGMAS = 0.6;
    /** The cells beside the corner show at least this share of it: a star in the corner cell does not. */
    private static final double LEAST_BESIDE = 0.25;

    private final Grid grid;
    private final Lattice lattice;
    private final Surface field;

    Corners(Grid grid, Surface field) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.field = field;
    }

    Optional<Corner> brightest() {
        return all(1).stream().max(Comparator.comparingDouble(Corner::amount)).filter(c -> counts(c, 1));
    }

    Optional<Corner> darkest() {
        return all(-1).stream().max(Comparator.comparingDouble(Corner::amount)).filter(c -> counts(c, -1));
    }

    private List<Corner> all(int sign) {
        double[] off = IntStream.range(0, 4)
                .mapToDouble(i -> sign * residual(i / 2, i % 2, 0, 0))
                .toArray();
        return IntStream.range(0, 4)
                .mapToObj(i -> new Corner(i / 2, i % 2, off[i] - othersOf(off, i)))
                .toList();
    }

    private static double othersOf(double[] off, int corner) {
        return Robust.median(IntStream.range(0, 4)
                .filter(i -> i != corner)
                .mapToDouble(i -> off[i])
                .toArray());
    }

    private boolean counts(Corner corner, int sign) {
        double least = Math.max(LEAST_SCATTERS * field.scatter(), LEAST_SIGMAS * grid.wholeSigma());
        double beside = sign
                * (residual(corner.row(), corner.column(), 0, 1) + residual(corner.row(), corner.column(), 1, 0))
                / 2;
        double inward = sign * residual(corner.row(), corner.column(), 2, 2);
        return corner.amount() > least && beside > LEAST_BESIDE * corner.amount() && inward < 0.9 * corner.amount();
    }

    /** Level of the cell so many rows and columns inward from a corner, beyond the smooth field; 0 without pixels. */
    private double residual(int cornerRow, int cornerColumn, int rows, int columns) {
        int row = cornerRow == 0 ? rows : lattice.rows() - 1 - rows;
        int column = cornerColumn == 0 ? columns : lattice.columns() - 1 - columns;
        int cell = row * lattice.columns() + column;
        double u = 2 * (lattice.middleX(column) + 0.5) / lattice.width() - 1;
        double v = 2 * (lattice.middleY(row) + 0.5) / lattice.height() - 1;
        return grid.present()[cell] ? field.residual(new Patch(u, v, grid.cellLevel(cell))) : 0;
    }
}
