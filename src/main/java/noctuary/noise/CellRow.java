package noctuary.noise;

import noctuary.stats.Selection;

/** Samples the pixels of one row of cells and finds their background. */
final class CellRow {
    /** Samples a cell and side; on a mosaic, of each phase. */
    private static final int SAMPLES = 12;

    private static final int PHASE_SAMPLES = 8;
    /** What is left of a normal standard deviation after clipping at three sigmas until nothing changes. */
    private static final double CLIPPED_SHARE = 0.984846;

    private static final int MOST_PASSES = 8;
    /** Every such sample tells where the clipping starts. */
    private static final int START = 3;

    private final Lattice lattice;
    private final FramePixels pixels;
    private final int row;
    private final float[][][] samples;
    private final int[][] counts;

    CellRow(Lattice lattice, FramePixels pixels, int row) {
        this.lattice = lattice;
        this.pixels = pixels;
        this.row = row;
        int most = most(lattice.width(), lattice.columns()) * most(lattice.height(), lattice.rows());
        this.samples = new float[lattice.phases()][lattice.columns()][most];
        this.counts = new int[lattice.phases()][lattice.columns()];
    }

    private int most(int length, int cells) {
        return (length / cells + 1) / step(length / cells) + 2;
    }

    /** Distance of the samples in pixels of the frame, a multiple of the stride. */
    private int step(int side) {
        return lattice.stride()
                * Math.max(1, side / (lattice.stride() * (lattice.stride() == 1 ? SAMPLES : PHASE_SAMPLES)));
    }

    void measure(float[][] level, float[][] sigma) {
        sample();
        for (int p = 0; p < samples.length; p++) {
            for (int column = 0; column < lattice.columns(); column++) {
                clip(samples[p][column], counts[p][column], p, row * lattice.columns() + column, level, sigma);
            }
        }
    }

    private void sample() {
        int stride = lattice.stride();
        int stepX = step(lattice.width() / lattice.columns());
        int stepY = step(lattice.height() / lattice.rows());
        float[] line = new float[lattice.width()];
        for (int y = lattice.top(row); y < lattice.top(row + 1); y++) {
            if ((y - lattice.top(row)) % stepY >= stride) {
                continue;
            }
            pixels.copyRow(y, line);
            for (int column = 0; column < lattice.columns(); column++) {
                sample(line, y % stride * stride, column, stepX);
            }
        }
    }

    private void sample(float[] line, int phaseRow, int column, int stepX) {
        int to = lattice.left(column + 1);
        for (int dx = 0; dx < lattice.stride(); dx++) {
            int first = lattice.left(column) + dx;
            int phase = phaseRow + first % lattice.stride();
            counts[phase][column] = sample(line, first, to, stepX, samples[phase][column], counts[phase][column]);
        }
    }

    private static int sample(float[] line, int from, int to, int step, float[] into, int count) {
        int n = count;
        for (int x = from; x < to; x += step) {
            if (Float.isFinite(line[x])) {
                into[n++] = line[x];
            }
        }
        return n;
    }

    /** Mean and standard deviation after clipping at three sigmas about the median, then about the mean. */
    private static void clip(float[] values, int count, int phase, int cell, float[][] level, float[][] sigma) {
        if (count == 0) {
            level[phase][cell] = Float.NaN;
            sigma[phase][cell] = Float.NaN;
            return;
        }
        int some = (count + START - 1) / START;
        float[] start = new float[some];
        for (int i = 0; i < some; i++) {
            start[i] = values[i * START];
        }
        double centre = Selection.median(start, some);
        double spread = Selection.sigma(start, some, centre);
        double quantum = spread > 0 ? 0 : smallestStep(values, count, centre);
        int kept = -1;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double reach = Math.max(3 * spread, 1.5 * quantum);
            double sum = 0;
            double sum2 = 0;
            int n = 0;
            for (int i = 0; i < count; i++) {
                double d = values[i] - centre;
                if (Math.abs(d) <= reach) {
                    sum += d;
                    sum2 += d * d;
                    n++;
                }
            }
            double shift = sum / n;
            centre += shift;
            spread = Math.sqrt(Math.max(0, sum2 / n - shift * shift)) / CLIPPED_SHARE;
            if (n == kept) {
                break;
            }
            kept = n;
        }
        level[phase][cell] = (float) centre;
        sigma[phase][cell] = (float) spread;
    }

    /** Where most values are equal, the distance to the nearest other value; 0 when there is none. */
    private static double smallestStep(float[] values, int count, double centre) {
        double smallest = Double.MAX_VALUE;
        for (int i = 0; i < count; i++) {
            double d = Math.abs(values[i] - centre);
            smallest = d > 0 && d < smallest ? d : smallest;
        }
        return smallest == Double.MAX_VALUE ? 0 : smallest;
    }
}
