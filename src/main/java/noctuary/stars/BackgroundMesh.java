package noctuary.stars;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import noctuary.stats.Robust;

/**
 * Level and noise of the sky on a mesh of cells, median-filtered over 3 x 3 cells and interpolated smoothly between
 * their centres. Cells without pixels take the median of their neighbours; a plane without any reads NaN everywhere.
 */
public final class BackgroundMesh {
    private static final double STRUCTURED = 1.25;
    private static final double CEILING_SIGMAS = 4;

    private final int width;
    private final int height;
    private final int columns;
    private final int rows;
    private final double[] level;
    private final double[] noise;
    private final double[] roughness;
    private final double middleLevel;
    private final double middleNoise;

    private BackgroundMesh(
            int width, int height, int columns, int rows, double[] level, double[] spread, double[] fineNoise) {
        this.width = width;
        this.height = height;
        this.columns = columns;
        this.rows = rows;
        this.level = filtered(level);
        this.noise = filtered(spread);
        this.roughness = new double[noise.length];
        divide(filtered(fineNoise));
        this.middleLevel = medianOf(this.level);
        this.middleNoise = medianOf(this.noise);
    }

    /**
     * Splits the spread of a cell into noise and structure where it is clearly more than the differences of
     * neighbouring pixels tell, measured by the ratio of both in the smoother cells of the frame.
     */
    private void divide(double[] fineNoise) {
        double[] ratio = IntStream.range(0, noise.length)
                .mapToDouble(i -> noise[i] / fineNoise[i])
                .filter(Double::isFinite)
                .toArray();
        double usual = Robust.quantile(ratio, 0.2);
        for (int i = 0; i < noise.length; i++) {
            double alone = usual * fineNoise[i];
            if (noise[i] > STRUCTURED * alone && alone > 0) {
                roughness[i] = Math.sqrt(noise[i] * noise[i] - alone * alone);
                noise[i] = alone;
            }
        }
    }

    /** Measures a plane in cells of about {@code cellPx} pixels, on the green pixels of a mosaic. */
    public static BackgroundMesh of(Plane plane, Optional<Mosaic> mosaic, int cellPx) {
        return of(plane, Sampling.of(mosaic), cellPx);
    }

    static BackgroundMesh of(Plane plane, Sampling sampling, int cellPx) {
        int columns = Math.max(1, Math.round((float) plane.width() / cellPx));
        int rows = Math.max(1, Math.round((float) plane.height() / cellPx));
        double[] level = new double[columns * rows];
        double[] noise = new double[columns * rows];
        double[] fine = new double[columns * rows];
        IntStream.range(0, rows).parallel().forEach(row -> {
            int y0 = edge(row, rows, plane.height());
            int h = edge(row + 1, rows, plane.height()) - y0;
            float[] pixels = new float[(edge(1, columns, plane.width()) + 2) * h + plane.width()];
            for (int column = 0; column < columns; column++) {
                int x0 = edge(column, columns, plane.width());
                int w = edge(column + 1, columns, plane.width()) - x0;
                CellLevel cell = CellLevel.of(pixels, sampling.gather(plane, x0, y0, w, h, pixels));
                level[row * columns + column] = cell.level();
                noise[row * columns + column] = cell.noise();
                fine[row * columns + column] = cell.fineNoise();
            }
        });
        return new BackgroundMesh(plane.width(), plane.height(), columns, rows, level, noise, fine);
    }

    private static int edge(int index, int count, int length) {
        return (int) ((long) index * length / count);
    }

    /** Sky level at a pixel, ADU. */
    public double levelAt(double x, double y) {
        return interpolate(level, x, y);
    }

    /** Standard deviation of the sky a pixel, ADU. */
    public double noiseAt(double x, double y) {
        return Math.max(0, interpolate(noise, x, y));
    }

    /** Standard deviation of structure (nebula, crowding) within the cell around a pixel, 0 where none shows, ADU. */
    public double roughnessAt(double x, double y) {
        return Math.max(0, interpolate(roughness, x, y));
    }

    /** Whether the cell of pixel (x, y) or one beside it has structure. */
    boolean structured(int x, int y) {
        int column = (int) ((long) x * columns / width);
        int row = (int) ((long) y * rows / height);
        for (int j = Math.max(0, row - 1); j <= Math.min(rows - 1, row + 1); j++) {
            for (int i = Math.max(0, column - 1); i <= Math.min(columns - 1, column + 1); i++) {
                if (roughness[j * columns + i] > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Less the median level, the value from which more than noise of so much a pixel shows; the largest float where the
     * sky has structure and none can be told.
     */
    float ceilingAt(double x, double y, double sigma) {
        return roughnessAt(x, y) > 0 ? Float.MAX_VALUE : (float) (levelAt(x, y) - middleLevel + CEILING_SIGMAS * sigma);
    }

    /** Pixels in a cell, about. */
    double cellArea() {
        return (double) width * height / (columns * rows);
    }

    /** Median level of the cells. */
    public double level() {
        return middleLevel;
    }

    /** Median noise of the cells. */
    public double noise() {
        return middleNoise;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    /** Level of one cell. */
    double cellLevel(int column, int row) {
        return level[row * columns + column];
    }

    /** Centre of a cell column, pixels. */
    double centreX(int column) {
        return (column + 0.5) * width / columns - 0.5;
    }

    double centreY(int row) {
        return (row + 0.5) * height / rows - 0.5;
    }

    /** The same levels with one noise everywhere. */
    BackgroundMesh withNoise(double sigma) {
        double[] same = new double[level.length];
        Arrays.fill(same, sigma);
        return new BackgroundMesh(width, height, columns, rows, level, same, same);
    }

    private static double medianOf(double[] cells) {
        return Robust.median(Arrays.stream(cells).filter(v -> !Double.isNaN(v)).toArray());
    }

    private double[] filtered(double[] cells) {
        double fallback = medianOf(cells);
        double[] out = new double[cells.length];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double median = around(cells, column, row);
                out[row * columns + column] = Double.isNaN(median) ? fallback : median;
            }
        }
        return out;
    }

    private double around(double[] cells, int column, int row) {
        double[] near = new double[9];
        int n = 0;
        for (int j = Math.max(0, row - 1); j <= Math.min(rows - 1, row + 1); j++) {
            for (int i = Math.max(0, column - 1); i <= Math.min(columns - 1, column + 1); i++) {
                double value = cells[j * columns + i];
                if (!Double.isNaN(value)) {
                    near[n++] = value;
                }
            }
        }
        return Robust.median(Arrays.copyOf(near, n));
    }

    /** Cubic convolution of Keys 1981 over 4 x 4 cells, the outermost repeated. */
    private double interpolate(double[] cells, double x, double y) {
        double u = clamp((x + 0.5) * columns / width - 0.5, columns);
        double v = clamp((y + 0.5) * rows / height - 0.5, rows);
        int column = (int) Math.floor(u);
        int row = (int) Math.floor(v);
        double sum = 0;
        for (int j = -1; j <= 2; j++) {
            double line = 0;
            int from = index(row + j, rows) * columns;
            for (int i = -1; i <= 2; i++) {
                line += keys(u - column - i) * cells[from + index(column + i, columns)];
            }
            sum += keys(v - row - j) * line;
        }
        return sum;
    }

    private static double clamp(double u, int count) {
        return Math.max(-0.5, Math.min(count - 0.5, u));
    }

    private static int index(int i, int count) {
        return Math.max(0, Math.min(count - 1, i));
    }

    private static double keys(double t) {
        double a = Math.abs(t);
        return a < 1 ? 1 - a * a * (2.5 - 1.5 * a) : a < 2 ? 2 - a * (4 - a * (2.5 - 0.5 * a)) : 0;
    }
}
