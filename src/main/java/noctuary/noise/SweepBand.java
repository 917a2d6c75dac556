package noctuary.noise;

/** The rows of one row of cells. */
final class SweepBand {
    /** Pixels further from the background than this many sigmas are no background. */
    private static final float CLIP_SIGMAS = 4;

    private final Grid grid;
    private final Lattice lattice;
    private final int row;
    private final Singles singles;
    private final Ends ends;
    private final BackgroundRows background;
    private final float[] line;
    private final float[] residual;
    private final float[] columnSum;
    private final float[] columnCount;
    private long hot;
    private long cold;

    SweepBand(Grid grid, int row, float saturation) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.row = row;
        this.singles = new Singles(grid);
        this.ends = new Ends(saturation);
        this.background = new BackgroundRows(grid);
        this.line = new float[lattice.width()];
        this.residual = new float[lattice.width()];
        this.columnSum = new float[lattice.width()];
        this.columnCount = new float[lattice.width()];
    }

    long hot() {
        return hot;
    }

    long cold() {
        return cold;
    }

    Ends ends() {
        return ends;
    }

    void look(float[][] rowMeans, float[][] columnMeans) {
        for (int y = lattice.top(row); y < lattice.top(row + 1); y++) {
            grid.pixels().copyRow(y, line);
            ends.look(line);
            background.subtract(y, line, residual);
            for (int column = 0; column < lattice.columns(); column++) {
                rowMeans[y][column] = segment(y, column);
            }
        }
        for (int x = 0; x < columnSum.length; x++) {
            columnMeans[x][row] = columnSum[x] / columnCount[x];
        }
    }

    /** Mean of the background pixels of one row within one cell; counts the single pixels on the way. */
    private float segment(int y, int column) {
        float sigma = (float) grid.cellSigma(row * lattice.columns() + column);
        float clip = CLIP_SIGMAS * (sigma > 0 ? sigma : (float) grid.wholeSigma());
        float sum = 0;
        int count = 0;
        for (int x = lattice.left(column); x < lattice.left(column + 1); x++) {
            float r = residual[x];
            if (Math.abs(r) < clip) {
                sum += r;
                count++;
                columnSum[x] += r;
                columnCount[x]++;
            } else if (Math.abs(r) > 2 * clip) {
                single(x, y, r, clip / CLIP_SIGMAS);
            }
        }
        return sum / count;
    }

    private void single(int x, int y, float r, float sigma) {
        boolean highest = (x == 0 || Math.abs(residual[x - 1]) < Math.abs(r) || residual[x - 1] * r < 0)
                && (x == residual.length - 1 || Math.abs(residual[x + 1]) < Math.abs(r) || residual[x + 1] * r < 0);
        if (highest && Float.isFinite(r) && singles.standsAlone(x, y, r, sigma)) {
            hot += r > 0 ? 1 : 0;
            cold += r < 0 ? 1 : 0;
        }
    }
}
