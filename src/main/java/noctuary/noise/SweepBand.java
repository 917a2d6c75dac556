package noctuary.noise;

import java.util.Arrays;

/** The rows of one row of cells, a few at a time. */
final class SweepBand {
    /** Pixels further from the background than this many sigmas are no background. */
    private static final float CLIP_SIGMAS = 4;

    private static final float SINGLE_SIGMAS = 8;
    /**
     * On frames larger than this, every fourth row tells the ends of the range, and every second cell, as on a
     * chessboard, the means of rows and columns: a line of 4000 pixels still knows its mean to 2 % of the noise.
     */
    private static final long MANY_PIXELS = 4_000_000;

    /**
     * Rows that are looked at together, so that only columns with something in them are looked at pixel by pixel, and sums
     * down the columns are kept in memory less often.
     */
    private static final int TOGETHER = FourRows.ROWS;

    private final Grid grid;
    private final Lattice lattice;
    private final int row;
    private final int width;
    private final Singles singles;
    private final Ends ends;
    private final int step;
    private final BackgroundRows background;
    private final float[] clips;
    private final float[] line;
    /** Of the rows at hand: what they hold above their background, 0 where that is more than background. */
    private final float[][] residuals;
    /** Sums of their squares, by column: below the square of the clip, nothing is to be found there. */
    private final float[] squares;
    /** By row, then by cell. */
    private final int[][] rowLeftOut;

    /** Columns of a cell with something in them. */
    private final int[] suspects;

    /** Pixels that are no background, as {@link #TOGETHER} times their column and their row. */
    private final int[] leftOut;

    private int leftOutCount;
    private final float[] columnSum;
    private final int[] columnLeftOut;

    SweepBand(Grid grid, int row, float saturation) {
        this.grid = grid;
        this.lattice = grid.lattice();
        this.row = row;
        this.width = lattice.width();
        this.singles = new Singles(grid);
        this.ends = new Ends(saturation);
        this.step = step(lattice);
        this.background = new BackgroundRows(grid, 0, width);
        this.clips = new float[lattice.columns()];
        for (int column = 0; column < clips.length; column++) {
            float sigma = (float) grid.cellSigma(row * lattice.columns() + column);
            clips[column] = CLIP_SIGMAS * (sigma > 0 ? sigma : (float) grid.wholeSigma());
        }
        this.line = new float[width];
        this.residuals = new float[TOGETHER][width];
        this.squares = new float[width];
        this.rowLeftOut = new int[TOGETHER][lattice.columns()];
        this.suspects = new int[width];
        this.leftOut = new int[TOGETHER * width];
        this.columnSum = new float[width];
        this.columnLeftOut = new int[width];
    }

    long hot() {
        return singles.hot();
    }

    long cold() {
        return singles.cold();
    }

    Ends ends() {
        return ends;
    }

    void look(float[][] rowMeans, float[][] columnMeans) {
        int bottom = lattice.top(row + 1);
        for (int y = lattice.top(row); y < bottom; y += TOGETHER) {
            int rows = Math.min(TOGETHER, bottom - y);
            read(y, rows);
            leaveOut(y, rows);
            FourRows.add(residuals, columnSum);
            for (int k = 0; k < rows; k++) {
                mean(residuals[k], rowLeftOut[k], rowMeans[y + k]);
            }
        }
        singles.judge();
        for (int column = 0; column < lattice.columns(); column++) {
            for (int x = lattice.left(column); asked(column) && x < lattice.left(column + 1); x++) {
                int count = bottom - lattice.top(row) - columnLeftOut[x];
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

    private void read(int y, int rows) {
        for (int k = 0; k < rows; k++) {
            grid.pixels().copyRow(y + k, line);
            if ((y + k) % (step * step) == 0) {
                ends.look(line);
            }
            background.subtract(y + k, line, residuals[k]);
        }
        for (int k = rows; k < TOGETHER; k++) {
            Arrays.fill(residuals[k], 0);
        }
        FourRows.square(residuals, squares);
    }

    /** Blanks what is no background; finds what may be single pixels on the way, which wants its neighbours as they are. */
    private void leaveOut(int y, int rows) {
        leftOutCount = 0;
        for (int k = 0; k < rows; k++) {
            Arrays.fill(rowLeftOut[k], 0);
        }
        for (int column = 0; column < clips.length; column++) {
            int many = suspect(lattice.left(column), lattice.left(column + 1), clips[column] * clips[column]);
            for (int i = 0; i < many; i++) {
                leaveOut(suspects[i], column, y, rows);
            }
        }
        for (int i = 0; i < leftOutCount; i++) {
            residuals[leftOut[i] % TOGETHER][leftOut[i] / TOGETHER] = 0;
        }
    }

    /** How many columns have something in them; the look at each is work of another kind and stays out of this loop. */
    private int suspect(int from, int to, float square) {
        int many = 0;
        for (int x = from; x < to; x++) {
            suspects[many] = x;
            many += squares[x] < square ? 0 : 1;
        }
        return many;
    }

    private void leaveOut(int x, int column, int y, int rows) {
        for (int k = 0; k < rows; k++) {
            if (!(Math.abs(residuals[k][x]) < clips[column])) {
                leftOut[leftOutCount++] = TOGETHER * x + k;
                rowLeftOut[k][column]++;
                columnLeftOut[x]++;
                single(x, y + k, residuals[k], clips[column] / CLIP_SIGMAS);
            }
        }
    }

    private void single(int x, int y, float[] residual, float sigma) {
        float r = residual[x];
        if (!(Math.abs(r) > SINGLE_SIGMAS * sigma && Float.isFinite(r))) {
            return;
        }
        boolean highest = (x == 0 || Math.abs(residual[x - 1]) < Math.abs(r) || residual[x - 1] * r < 0)
                && (x == width - 1 || Math.abs(residual[x + 1]) < Math.abs(r) || residual[x + 1] * r < 0);
        if (highest) {
            singles.remember(x, y, r, sigma);
        }
    }

    private void mean(float[] residual, int[] gone, float[] rowMeans) {
        for (int column = row % step; column < gone.length; column += step) {
            int from = lattice.left(column);
            int to = lattice.left(column + 1);
            rowMeans[column / step] = FourRows.sum(residual, from, to) / (to - from - gone[column]);
        }
    }
}
