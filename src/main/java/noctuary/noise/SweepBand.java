package noctuary.noise;

/** The rows of one row of cells. */
final class SweepBand {
    /** Pixels further from the background than this many sigmas are no background. */
    private static final float CLIP_SIGMAS = 4;

    private static final float SINGLE_SIGMAS = 8;
    /** On frames larger than this, every fourth row tells the ends of the range. */
    private static final long MANY_PIXELS = 4_000_000;

    private final Grid grid;
    private final Lattice lattice;
    private final int row;
    private final Singles singles;
    private final Ends ends;
    private final int endsStep;
    private final BackgroundRows background;
    private final float[] line;
    private final float[] residual;
    private final float[] kept;
    private final int[] leftOut;
    private final float[] columnSum;
    private final int[] columnLeftOut;
    private long hot;
    private long cold;

    SweepBand(Grid grid, int row, float saturation) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.row = row;
        this.singles = new Singles(grid);
        this.ends = new Ends(saturation);
        this.endsStep = (long) lattice.width() * lattice.height() > MANY_PIXELS ? 4 : 1;
        this.background = new BackgroundRows(grid, 0, lattice.width());
        this.line = new float[lattice.width()];
        this.residual = new float[lattice.width()];
        this.kept = new float[lattice.width()];
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
            if (y % endsStep == 0) {
                ends.look(line);
            }
            background.subtract(y, line, residual);
            System.arraycopy(residual, 0, kept, 0, kept.length);
            for (int column = 0; column < lattice.columns(); column++) {
                rowMeans[y][column] = segment(y, column);
            }
            addToColumns();
        }
        for (int x = 0; x < columnSum.length; x++) {
            int count = lattice.top(row + 1) - lattice.top(row) - columnLeftOut[x];
            columnMeans[x][row] = columnSum[x] / count;
        }
    }

    /** Mean of the background pixels of one row within one cell; counts the single pixels on the way. */
    private float segment(int y, int column) {
        float sigma = (float) grid.cellSigma(row * lattice.columns() + column);
        float clip = CLIP_SIGMAS * (sigma > 0 ? sigma : (float) grid.wholeSigma());
        int from = lattice.left(column);
        int to = lattice.left(column + 1);
        int count = leaveOut(from, to, clip);
        for (int i = 0; i < count; i++) {
            int x = leftOut[i];
            columnLeftOut[x]++;
            single(x, y, residual[x], clip / CLIP_SIGMAS);
        }
        return sum(kept, from, to) / (to - from - count);
    }

    /** Takes what is no background out of what is kept; returns how many pixels, their columns in {@link #leftOut}. */
    private int leaveOut(int from, int to, float clip) {
        int count = 0;
        for (int x = from; x < to; x++) {
            if (!(Math.abs(kept[x]) < clip)) {
                kept[x] = 0;
                leftOut[count++] = x;
            }
        }
        return count;
    }

    /** Four sums side by side, so that none waits for the other. */
    private static float sum(float[] values, int from, int to) {
        float a = 0;
        float b = 0;
        float c = 0;
        float d = 0;
        int x = from;
        for (; x < to - 3; x += 4) {
            a += values[x];
            b += values[x + 1];
            c += values[x + 2];
            d += values[x + 3];
        }
        for (; x < to; x++) {
            a += values[x];
        }
        return a + b + (c + d);
    }

    private void addToColumns() {
        for (int x = 0; x < columnSum.length; x++) {
            columnSum[x] += kept[x];
        }
    }

    private void single(int x, int y, float r, float sigma) {
        if (!(Math.abs(r) > SINGLE_SIGMAS * sigma && Float.isFinite(r))) {
            return;
        }
        boolean highest = (x == 0 || Math.abs(residual[x - 1]) < Math.abs(r) || residual[x - 1] * r < 0)
                && (x == residual.length - 1 || Math.abs(residual[x + 1]) < Math.abs(r) || residual[x + 1] * r < 0);
        if (highest && singles.standsAlone(x, y, r, sigma)) {
            hot += r > 0 ? 1 : 0;
            cold += r < 0 ? 1 : 0;
        }
    }
}
