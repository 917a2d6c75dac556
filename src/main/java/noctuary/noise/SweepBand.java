package noctuary.noise;

/** The rows of one row of cells. */
final class SweepBand {
    /** Pixels further from the background than this many sigmas are no background. */
    private static final float CLIP_SIGMAS = 4;

    private static final float SINGLE_SIGMAS = 8;
    /**
     * On frames larger than this, every fourth row tells the ends of the range, and every second cell, as on a
     * chessboard, the means of rows and columns: a line of 4000 pixels still knows its mean to 2 % of the noise.
     */
    private static final long MANY_PIXELS = 4_000_000;

    private final Grid grid;
    private final Lattice lattice;
    private final int row;
    private final Singles singles;
    private final Ends ends;
    private final int step;
    private final BackgroundRows background;
    private final float[] line;
    private final int[] leftOut;
    private final float[] columnSum;
    private final int[] columnLeftOut;
    private BackgroundRows.Line below;
    private float rowSum;
    private long hot;
    private long cold;

    SweepBand(Grid grid, int row, float saturation) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.row = row;
        this.singles = new Singles(grid);
        this.ends = new Ends(saturation);
        this.step = step(lattice);
        this.background = new BackgroundRows(grid, 0, lattice.width());
        this.line = new float[lattice.width()];
        this.leftOut = new int[lattice.width()];
        this.columnSum = new float[lattice.width()];
        this.columnLeftOut = new int[lattice.width()];
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
            if (y % (step * step) == 0) {
                ends.look(line);
            }
            below = background.line(y);
            for (int column = 0; column < lattice.columns(); column++) {
                segment(y, column, rowMeans[y]);
            }
        }
        for (int column = 0; column < lattice.columns(); column++) {
            for (int x = lattice.left(column); asked(column) && x < lattice.left(column + 1); x++) {
                int count = lattice.top(row + 1) - lattice.top(row) - columnLeftOut[x];
                columnMeans[x][row / step] = columnSum[x] / count;
            }
        }
    }

    /** Of how many cells along a line one is asked for its mean. */
    static int step(Lattice lattice) {
        return (long) lattice.width() * lattice.height() > MANY_PIXELS ? 2 : 1;
    }

    private boolean asked(int column) {
        return (row + column) % step == 0;
    }

    /** The background pixels of one row within one cell; counts the single pixels on the way. */
    private void segment(int y, int column, float[] rowMeans) {
        float sigma = (float) grid.cellSigma(row * lattice.columns() + column);
        float clip = CLIP_SIGMAS * (sigma > 0 ? sigma : (float) grid.wholeSigma());
        int from = lattice.left(column);
        int to = lattice.left(column + 1);
        int count = asked(column) ? add(from, to, clip) : look(from, to, clip);
        for (int i = 0; i < count; i++) {
            int x = leftOut[i];
            columnLeftOut[x]++;
            single(x, y, residual(x), clip / CLIP_SIGMAS);
        }
        if (asked(column)) {
            rowMeans[column / step] = rowSum / (to - from - count);
        }
    }

    /**
     * Adds what is background to the sums of row and columns, all in one pass because many pixels go through here;
     * returns how many pixels are none, their columns in {@link #leftOut}.
     */
    private int add(int from, int to, float clip) {
        float[] upper = below.upper();
        float[] change = below.change();
        float t = below.t();
        float sum = 0;
        int count = 0;
        for (int x = from; x < to; x++) {
            float r = line[x] - (upper[x] + t * change[x]);
            if (r > -clip && r < clip) {
                sum += r;
                columnSum[x] += r;
            } else {
                leftOut[count++] = x;
            }
        }
        rowSum = sum;
        return count;
    }

    /** As {@link #add}, without adding. */
    private int look(int from, int to, float clip) {
        float[] upper = below.upper();
        float[] change = below.change();
        float t = below.t();
        int count = 0;
        for (int x = from; x < to; x++) {
            float r = line[x] - (upper[x] + t * change[x]);
            if (!(r > -clip && r < clip)) {
                leftOut[count++] = x;
            }
        }
        return count;
    }

    private float residual(int x) {
        return line[x] - below.at(x);
    }

    private void single(int x, int y, float r, float sigma) {
        if (!(Math.abs(r) > SINGLE_SIGMAS * sigma && Float.isFinite(r))) {
            return;
        }
        boolean highest = (x == 0 || Math.abs(residual(x - 1)) < Math.abs(r) || residual(x - 1) * r < 0)
                && (x == line.length - 1 || Math.abs(residual(x + 1)) < Math.abs(r) || residual(x + 1) * r < 0);
        if (highest && singles.standsAlone(x, y, r, sigma)) {
            hot += r > 0 ? 1 : 0;
            cold += r < 0 ? 1 : 0;
        }
    }
}
