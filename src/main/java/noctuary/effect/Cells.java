package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Squares of {@value #SIDE} px, each with the origin's pixels and the mean that the picture has there. A step that
 * smooths moves light within a cell and hardly across its border, so that the mean over a cell tells the stretch; and
 * because the picture carries the origin's own noise, that noise tells as much as light does.
 */
record Cells(List<float[]> origin, double[] picture) {
    static final int SIDE = 16;
    private static final double LEAST_FILLED = 0.6;

    /** Pixels that are missing or black are left out, and cells with too many of them, or with any white one. */
    static Cells of(List<Tile> tiles) {
        List<float[]> origin = new ArrayList<>();
        List<Double> picture = new ArrayList<>();
        for (CellChoice.Place place : CellChoice.of(tiles, SIDE)) {
            add(place.tile(), place.x(), place.y(), origin, picture);
        }
        return new Cells(
                origin, picture.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void add(Tile tile, int x, int y, List<float[]> origin, List<Double> picture) {
        float[] values = new float[SIDE * SIDE];
        int count = 0;
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            int at = (y + i / SIDE) * tile.width() + x + i % SIDE;
            float p = tile.picture()[at];
            if (p >= 1) {
                return;
            }
            if (p > 0 && !Float.isNaN(tile.origin()[at])) {
                values[count++] = tile.origin()[at];
                sum += p;
            }
        }
        if (count >= LEAST_FILLED * values.length) {
            origin.add(Arrays.copyOf(values, count));
            picture.add(sum / count);
        }
    }

    int size() {
        return picture.length;
    }

    /** Mean of the origin in each. */
    double[] levels() {
        return origin.stream().mapToDouble(Cells::mean).toArray();
    }

    /** Standard deviation of the origin within each. */
    double[] spreads() {
        return origin.stream().mapToDouble(Cells::spread).toArray();
    }

    /** Standard deviation within each under a curve. */
    double[] spreads(Curve curve) {
        return origin.stream()
                .mapToDouble(pixels -> {
                    float[] shown = new float[pixels.length];
                    for (int i = 0; i < shown.length; i++) {
                        shown[i] = (float) curve.at(pixels[i]);
                    }
                    return spread(shown);
                })
                .toArray();
    }

    private static double mean(float[] values) {
        double sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double spread(float[] values) {
        double mean = mean(values);
        double sum = 0;
        for (float value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / values.length);
    }
}
