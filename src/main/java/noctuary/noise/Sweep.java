package noctuary.noise;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * One look at every pixel of a frame against its background: line means for banding, single pixels that stand out, and
 * the ends of the range.
 *
 * @param rowMeans by row, then by cell column, of large frames every second one: mean of what lies within four sigmas of
 *     the background; NaN for none
 * @param columnMeans by column, then by cell row, of large frames every second one
 * @param hot single pixels far above their neighbours
 * @param cold single pixels far below their neighbours
 */
record Sweep(float[][] rowMeans, float[][] columnMeans, long hot, long cold, Ends ends) {
    /** @param saturation from which a pixel counts as full; infinite when unknown */
    static Sweep of(Grid grid, float saturation) {
        Lattice lattice = grid.lattice();
        int step = SweepBand.step(lattice);
        float[][] rowMeans = unknown(lattice.height(), (lattice.columns() + step - 1) / step);
        float[][] columnMeans = unknown(lattice.width(), (lattice.rows() + step - 1) / step);
        SweepBand[] bands = new SweepBand[lattice.rows()];
        IntStream.range(0, bands.length).parallel().forEach(row -> {
            bands[row] = new SweepBand(grid, row, saturation);
            bands[row].look(rowMeans, columnMeans);
        });
        long hot = 0;
        long cold = 0;
        Ends ends = new Ends(saturation);
        for (SweepBand band : bands) {
            hot += band.hot();
            cold += band.cold();
            ends.merge(band.ends());
        }
        return new Sweep(rowMeans, columnMeans, hot, cold, ends);
    }

    private static float[][] unknown(int lines, int segments) {
        float[][] means = new float[lines][segments];
        for (float[] line : means) {
            Arrays.fill(line, Float.NaN);
        }
        return means;
    }
}
