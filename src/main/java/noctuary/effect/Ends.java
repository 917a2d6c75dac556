package noctuary.effect;

import java.util.stream.IntStream;
import noctuary.image.Plane;

/**
 * Shares of the pixels at black and at full white, where any colour is.
 *
 * @param blackPercent of all pixels
 * @param whitePercent as blackPercent
 */
record Ends(double blackPercent, double whitePercent) {

    static Ends of(Pixels pixels) {
        Plane first = pixels.planes().get(0);
        long[] found = IntStream.range(0, first.height())
                .parallel()
                .mapToObj(y -> row(pixels, y))
                .reduce(new long[2], (a, b) -> new long[] {a[0] + b[0], a[1] + b[1]});
        double all = (double) first.width() * first.height();
        return new Ends(100 * found[0] / all, 100 * found[1] / all);
    }

    private static long[] row(Pixels pixels, int y) {
        int width = pixels.planes().get(0).width();
        boolean[][] at = new boolean[2][width];
        float[] row = new float[width];
        for (Plane plane : pixels.planes()) {
            plane.copyRow(0, y, width, row, 0);
            for (int x = 0; x < width; x++) {
                at[0][x] |= row[x] <= 0;
                at[1][x] |= row[x] >= pixels.white();
            }
        }
        long[] counts = new long[2];
        for (int x = 0; x < width; x++) {
            counts[0] += at[0][x] ? 1 : 0;
            counts[1] += at[1][x] ? 1 : 0;
        }
        return counts;
    }
}
