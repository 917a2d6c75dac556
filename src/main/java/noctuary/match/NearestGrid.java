package noctuary.match;

/** Points sorted into square cells, for finding the one nearest to a place. */
final class NearestGrid {
    private static final int MOST_CELLS_A_SIDE = 512;

    private final Points points;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] start;
    private final int[] members;

    /** Cells that hold about one point each. */
    NearestGrid(Points points) {
        this.points = points;
        double wanted = Math.sqrt(points.area() / Math.max(1, points.size()));
        double widest = Math.max(points.maxX - points.minX, points.maxY - points.minY);
        cell = Math.max(wanted, widest / MOST_CELLS_A_SIDE) + 1e-9;
        columns = 1 + (int) ((points.maxX - points.minX) / cell);
        rows = 1 + (int) ((points.maxY - points.minY) / cell);
        start = new int[columns * rows + 1];
        members = new int[points.size()];
        for (int i = 0; i < points.size(); i++) {
            start[cellOf(i) + 1]++;
        }
        for (int c = 0; c < columns * rows; c++) {
            start[c + 1] += start[c];
        }
        int[] next = start.clone();
        for (int i = 0; i < points.size(); i++) {
            members[next[cellOf(i)]++] = i;
        }
    }

    /** Rank of the point nearest to (x, y) and no farther than {@code reach}, or -1. */
    int nearest(double x, double y, double reach) {
        int best = -1;
        double least = reach * reach;
        int lastRow = row(y + reach);
        int firstColumn = column(x - reach);
        int lastColumn = column(x + reach);
        for (int r = row(y - reach); r <= lastRow; r++) {
            int end = start[r * columns + lastColumn + 1];
            for (int m = start[r * columns + firstColumn]; m < end; m++) {
                double distance = squared(members[m], x, y);
                if (distance <= least) {
                    least = distance;
                    best = members[m];
                }
            }
        }
        return best;
    }

    /** How many points lie within {@code reach} of (x, y). */
    int count(double x, double y, double reach) {
        int count = 0;
        int lastRow = row(y + reach);
        int firstColumn = column(x - reach);
        int lastColumn = column(x + reach);
        for (int r = row(y - reach); r <= lastRow; r++) {
            int end = start[r * columns + lastColumn + 1];
            for (int m = start[r * columns + firstColumn]; m < end; m++) {
                count += squared(members[m], x, y) <= reach * reach ? 1 : 0;
            }
        }
        return count;
    }

    private double squared(int i, double x, double y) {
        double dx = points.x[i] - x;
        double dy = points.y[i] - y;
        return dx * dx + dy * dy;
    }

    private int cellOf(int i) {
        return row(points.y[i]) * columns + column(points.x[i]);
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - points.minY) / cell));
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - points.minX) / cell));
    }
}
