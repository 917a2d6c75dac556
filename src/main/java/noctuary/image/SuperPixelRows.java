package noctuary.image;

import java.util.Arrays;

/** One colour of a mosaic at half its size: each 2 x 2 cell gives the mean of its pixels under that filter. */
final class SuperPixelRows implements Rows {
    private final Plane plane;
    private final Mosaic mosaic;
    private final char filter;

    SuperPixelRows(Plane plane, Mosaic mosaic, char filter) {
        this.plane = plane;
        this.mosaic = mosaic;
        this.filter = filter;
    }

    @Override
    public int width() {
        return plane.width() / 2;
    }

    @Override
    public int height() {
        return plane.height() / 2;
    }

    @Override
    public void copyRow(int y, float[] into) {
        Arrays.fill(into, 0, width(), 0);
        int found = 0;
        float[] row = new float[2 * width()];
        for (int dy = 0; dy < 2; dy++) {
            for (int dx = 0; dx < 2; dx++) {
                if (mosaic.filterAt(dx, dy) == filter) {
                    plane.copyRow(0, 2 * y + dy, row.length, row, 0);
                    addEverySecond(row, dx, into);
                    found++;
                }
            }
        }
        for (int x = 0; x < width(); x++) {
            into[x] /= found;
        }
    }

    private void addEverySecond(float[] row, int from, float[] into) {
        for (int x = 0; x < width(); x++) {
            into[x] += row[2 * x + from];
        }
    }
}
