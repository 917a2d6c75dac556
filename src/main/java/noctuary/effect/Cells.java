package noctuary.effect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Squares of {@value #SIDE} px, each with the origin's pixels and the mean that the picture has there. A step that
 * smooths moves light within a cell and hardly across its border, so that the mean over a cell tells the stretch; and
 * because the picture carries the origin's own noise, that noise tells as much as light does.
 */
record Cells(List<float[]> origin, List<float[]> shown, double[] picture) {
    static final int SIDE = 16;
    static final int WHOLE_SIDE = 32;
    private static final double LEAST_FILLED = 0.6;

    /** Pixels that are missing or black are left out, and cells with too many of them, or with any white one. */
    static Cells of(List<Tile> tiles) {
        return of(CellChoice.of(tiles, SIDE), SIDE, LEAST_FILLED, (tile, at) -> tile.origin()[at]);
    }

    /** As if the origin had been smoothed by the median over a square. */
    static Cells ofMedians(List<Tile> tiles, int reach) {
        return of(CellChoice.of(tiles, SIDE), SIDE, LEAST_FILLED, (tile, at) -> MedianOf.at(tile, at, reach));
    }

    /** Larger cells around stars and without any such pixel, so that their light is whole. */
    static Cells whole(List<Tile> tiles) {
        return of(CellChoice.centred(tiles, WHOLE_SIDE), WHOLE_SIDE, 1, (tile, at) -> tile.origin()[at]);
    }

    /** The origin's light at a pixel of a tile. */
    private interface Light {
        float at(Tile tile, int index);
    }

    private static Cells of(List<CellChoice.Place> places, int side, double leastFilled, Light light) {
        List<float[]> origin = new ArrayList<>();
        List<float[]> shown = new ArrayList<>();
        for (CellChoice.Place place : places) {
            add(place, side, leastFilled, light, origin, shown);
        }
        return new Cells(origin, shown, shown.stream().mapToDouble(Cells::mean).toArray());
    }

    private static void add(
            CellChoice.Place place,
            int side,
            double leastFilled,
            Light light,
            List<float[]> origin,
            List<float[]> shown) {
        Tile tile = place.tile();
        float[] before = new float[side * side];
        float[] after = new float[side * side];
        int count = 0;
        for (int i = 0; i < before.length; i++) {
            int at = (place.y() + i / side) * tile.width() + place.x() + i % side;
            float p = tile.picture()[at];
            if (p >= 1) {
                return;
            }
            float value = p > 0 ? light.at(tile, at) : Float.NaN;
            if (!Float.isNaN(value)) {
                before[count] = value;
                after[count++] = p;
            }
        }
        if (count >= leastFilled * before.length) {
            origin.add(Arrays.copyOf(before, count));
            shown.add(Arrays.copyOf(after, count));
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
