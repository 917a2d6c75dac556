package noctuary.noise;

import java.util.Arrays;
import java.util.stream.IntStream;
import noctuary.image.Plane;
import noctuary.stats.Robust;

/**
 * Level and noise of the background in every cell and phase of a frame, from a sample of its pixels; cells without
 * pixels take the value of the whole.
 *
 * @param level by phase, then by {@code row * columns + column}
 * @param sigma as level
 * @param phaseLevel median over the cells, by phase; NaN when the frame has no pixels
 * @param phaseSigma as phaseLevel
 * @param present whether the cell has pixels of its own
 */
record Grid(
        Lattice lattice,
        FramePixels pixels,
        float[][] level,
        float[][] sigma,
        double[] phaseLevel,
        double[] phaseSigma,
        boolean[] present) {

    /** Samples the frame, and once more without its zero padding when it has some. */
    static Grid of(Plane plane, Lattice lattice) {
        Grid first = of(new FramePixels(plane, false), lattice);
        return first.looksPadded() ? of(new FramePixels(plane, true), lattice) : first;
    }

    private static Grid of(FramePixels pixels, Lattice lattice) {
        int cells = lattice.columns() * lattice.rows();
        float[][] level = new float[lattice.phases()][cells];
        float[][] sigma = new float[lattice.phases()][cells];
        IntStream.range(0, lattice.rows())
                .parallel()
                .forEach(row -> new CellRow(lattice, pixels, row).measure(level, sigma));
        boolean[] present = present(level);
        double[] phaseLevel = new double[lattice.phases()];
        double[] phaseSigma = new double[lattice.phases()];
        for (int p = 0; p < phaseLevel.length; p++) {
            sigma[p] = withoutSlope(level[p], sigma[p], lattice);
            phaseLevel[p] = median(level[p], sigma[p]);
            phaseSigma[p] = median(sigma[p], sigma[p]);
            fillGaps(level[p], phaseLevel[p]);
            fillGaps(sigma[p], phaseSigma[p]);
        }
        return new Grid(lattice, pixels, level, sigma, phaseLevel, phaseSigma, present);
    }

    /** A slope across a cell spreads its values evenly over the change d, and adds d² / 12 to their variance. */
    private static float[] withoutSlope(float[] level, float[] sigma, Lattice lattice) {
        float[] flat = sigma.clone();
        for (int cell = 0; cell < flat.length; cell++) {
            double across = change(level, cell, cell % lattice.columns(), lattice.columns(), 1);
            double down = change(level, cell, cell / lattice.columns(), lattice.rows(), lattice.columns());
            double variance = sigma[cell] * sigma[cell];
            double least = variance / 4;
            flat[cell] = (float) Math.sqrt(Math.max(least, variance - (across * across + down * down) / 12));
        }
        return flat;
    }

    /** Change of the level over a cell, from its neighbours; 0 at the end of a line or beside a gap. */
    private static double change(float[] level, int cell, int place, int places, int step) {
        if (place == 0 || place == places - 1) {
            return 0;
        }
        double change = (level[cell + step] - level[cell - step]) / 2.0;
        return Double.isNaN(change) ? 0 : change;
    }

    /** Over the cells whose pixels differ among themselves; over all when none do. */
    private static double median(float[] values, float[] sigma) {
        double[] varied = IntStream.range(0, values.length)
                .filter(i -> sigma[i] > 0)
                .mapToDouble(i -> values[i])
                .toArray();
        double[] present = IntStream.range(0, values.length)
                .filter(i -> !Float.isNaN(values[i]))
                .mapToDouble(i -> values[i])
                .toArray();
        return Robust.median(varied.length > 0 ? varied : present);
    }

    /** Whether a cell had pixels in every phase. */
    private static boolean[] present(float[][] level) {
        boolean[] present = new boolean[level[0].length];
        for (int i = 0; i < present.length; i++) {
            present[i] = true;
            for (float[] phase : level) {
                present[i] &= !Float.isNaN(phase[i]);
            }
        }
        return present;
    }

    private static void fillGaps(float[] values, double whole) {
        for (int i = 0; i < values.length; i++) {
            values[i] = Float.isNaN(values[i]) ? (float) whole : values[i];
        }
    }

    /** Whether some cells are all zero while zero is far below the background. */
    private boolean looksPadded() {
        int flat = 0;
        for (int i = 0; i < level[0].length; i++) {
            flat += level[0][i] == 0 && sigma[0][i] == 0 ? 1 : 0;
        }
        return flat > 0 && phaseLevel[0] > 8 * phaseSigma[0];
    }

    /** Whether there is noise to judge by. */
    boolean hasNoise() {
        return Arrays.stream(phaseSigma).allMatch(s -> s > 0);
    }

    /** Mean over the phases. */
    double wholeLevel() {
        return Arrays.stream(phaseLevel).average().orElse(Double.NaN);
    }

    double wholeSigma() {
        return Math.sqrt(Arrays.stream(phaseSigma).map(s -> s * s).average().orElse(Double.NaN));
    }

    /** Mean over the phases in one cell. */
    double cellLevel(int cell) {
        double sum = 0;
        for (float[] phase : level) {
            sum += phase[cell];
        }
        return sum / level.length;
    }

    double cellSigma(int cell) {
        double sum = 0;
        for (float[] phase : sigma) {
            sum += phase[cell] * phase[cell];
        }
        return Math.sqrt(sum / sigma.length);
    }

    /** Background under pixel (x, y), straight lines between the middles of the cells and beyond the outermost. */
    double levelAt(int x, int y) {
        int stride = lattice.stride();
        float[] phase = level[y % stride * stride + x % stride];
        int column = lowerColumn(x);
        int row = lowerRow(y);
        double tx = lattice.columns() == 1
                ? 0
                : (x - lattice.middleX(column)) / (lattice.middleX(column + 1) - lattice.middleX(column));
        double ty = lattice.rows() == 1
                ? 0
                : (y - lattice.middleY(row)) / (lattice.middleY(row + 1) - lattice.middleY(row));
        int at = row * lattice.columns() + column;
        int right = lattice.columns() == 1 ? 0 : 1;
        int below = lattice.rows() == 1 ? 0 : lattice.columns();
        double upper = phase[at] + tx * (phase[at + right] - phase[at]);
        double lower = phase[at + below] + tx * (phase[at + below + right] - phase[at + below]);
        return upper + ty * (lower - upper);
    }

    /** The cell column at or left of {@code x} from which to interpolate to the next. */
    int lowerColumn(int x) {
        int column = (int) Math.min(lattice.columns() - 1L, (long) x * lattice.columns() / lattice.width());
        int lower = x < lattice.middleX(column) ? column - 1 : column;
        return Math.max(0, Math.min(lattice.columns() - 2, lower));
    }

    int lowerRow(int y) {
        int row = (int) Math.min(lattice.rows() - 1L, (long) y * lattice.rows() / lattice.height());
        int lower = y < lattice.middleY(row) ? row - 1 : row;
        return Math.max(0, Math.min(lattice.rows() - 2, lower));
    }
}
