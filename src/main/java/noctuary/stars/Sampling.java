package noctuary.stars;

import java.util.Optional;
import noctuary.image.Mosaic;
import noctuary.image.Plane;

/** Which pixels of a plane count: all of them, or the green ones of a colour mosaic. */
record Sampling(int parity) {
    /** Pixels of a rectangle from which every second row is enough. */
    private static final int PLENTY = 3000;
    /** Pixels of a plane from which every eighth is: so many cells make up for the error of each. */
    private static final int LARGE = 8_000_000;

    static final Sampling ALL = new Sampling(-1);

    static Sampling of(Optional<Mosaic> mosaic) {
        return mosaic.map(m -> new Sampling(m.filterAt(0, 0) == 'G' ? 0 : 1)).orElse(ALL);
    }

    boolean all() {
        return parity < 0;
    }

    boolean counts(int x, int y) {
        return parity < 0 || ((x + y) & 1) == parity;
    }

    /**
     * Copies the counting, present pixels of a rectangle into {@code into}, of large ones every second or eighth row;
     * returns how many.
     */
    int gather(Plane plane, int x0, int y0, int width, int height, float[] into) {
        int n = 0;
        boolean large = all() && (long) plane.width() * plane.height() >= LARGE;
        int step = width * height <= PLENTY ? 1 : large ? 8 : 2;
        for (int y = y0; y < y0 + height; y += step) {
            plane.copyRow(x0, y, width, into, n);
            n = all() && !plane.mayLack() ? n + width : compact(into, n, width, all() ? 0 : (x0 + y + parity) & 1);
        }
        return n;
    }

    private int compact(float[] values, int from, int length, int first) {
        int step = all() ? 1 : 2;
        int n = from;
        for (int i = from + first; i < from + length; i += step) {
            float value = values[i];
            if (value == value) {
                values[n++] = value;
            }
        }
        return n;
    }
}
