package noctuary.image;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Smaller copies of planes by area averaging: every output pixel is the mean of the input it covers, weighted by the
 * covered area; missing pixels are left out, and an output pixel that covers nothing else is missing. Flux per area
 * and, for white noise, the noise expected of a mean are kept.
 */
public final class Resample {
    private Resample() {}

    /** At most {@code maxWidth} wide, proportions kept; never enlarged. */
    public static Plane toWidth(Plane plane, int maxWidth) {
        return toWidth(Rows.of(plane), maxWidth);
    }

    /**
     * Red, green and blue of a mosaic, from 2 x 2 cells, at most {@code maxWidth} wide; the plane itself when it has no
     * whole cell.
     */
    public static List<Plane> colours(Plane plane, Mosaic mosaic, int maxWidth) {
        if (plane.width() < 2 || plane.height() < 2) {
            return List.of(plane);
        }
        return Stream.of('R', 'G', 'B')
                .map(filter -> toWidth(new SuperPixelRows(plane, mosaic, filter), maxWidth))
                .toList();
    }

    /** The plane at {@code width} x {@code height}, neither larger than its own. */
    public static Plane area(Plane plane, int width, int height) {
        return area(Rows.of(plane), width, height);
    }

    private static Plane toWidth(Rows rows, int maxWidth) {
        int width = Math.min(rows.width(), Math.max(1, maxWidth));
        int height = Math.max(1, (int) Math.round((double) rows.height() * width / rows.width()));
        return area(rows, width, Math.min(height, rows.height()));
    }

    private static Plane area(Rows rows, int width, int height) {
        if (width < 1 || height < 1 || width > rows.width() || height > rows.height()) {
            throw new IllegalArgumentException(
                    rows.width() + " x " + rows.height() + " cannot be averaged to " + width + " x " + height);
        }
        float[] pixels = new float[width * height];
        IntStream.range(0, height).parallel().forEach(y -> new AreaRow(rows, width, height).average(y, pixels));
        return Plane.of(width, height, pixels);
    }

    /** One output row. */
    private static final class AreaRow {
        private final Rows rows;
        private final int width;
        private final double stepX;
        private final double stepY;
        private final double[] sum;
        private final double[] weight;

        AreaRow(Rows rows, int width, int height) {
            this.rows = rows;
            this.width = width;
            this.stepX = (double) rows.width() / width;
            this.stepY = (double) rows.height() / height;
            this.sum = new double[width];
            this.weight = new double[width];
        }

        void average(int y, float[] pixels) {
            float[] row = new float[rows.width()];
            double from = y * stepY;
            double to = Math.min(rows.height(), from + stepY);
            for (int in = (int) from; in < to; in++) {
                rows.copyRow(in, row);
                addRow(row, Math.min(to, in + 1) - Math.max(from, in));
            }
            for (int x = 0; x < width; x++) {
                pixels[y * width + x] = (float) (sum[x] / weight[x]);
            }
        }

        private void addRow(float[] row, double share) {
            for (int x = 0; x < width; x++) {
                double from = x * stepX;
                double to = Math.min(row.length, from + stepX);
                int first = (int) from;
                add(x, row[first], share * (Math.min(to, first + 1) - from));
                for (int in = first + 1; in < to; in++) {
                    add(x, row[in], share * Math.min(1, to - in));
                }
            }
        }

        private void add(int x, float value, double area) {
            if (value == value && area > 1e-9) {
                sum[x] += value * area;
                weight[x] += area;
            }
        }
    }
}
