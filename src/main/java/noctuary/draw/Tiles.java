package noctuary.draw;

import java.io.IOException;
import java.util.List;
import noctuary.image.Plane;

/**
 * A large picture cut into square JPEG tiles: level 0 at full size, every further level half of the one before, until
 * one tile holds it all. Only some rows of each level are in memory. Halving averages what is shown, not the light.
 */
public final class Tiles {
    /** Width and height of a tile; those at the right and lower edges are smaller. */
    public static final int SIDE = 512;

    /** Rows asked of the canvas at once. */
    private static final int ROWS = 128;

    private Tiles() {}

    /** Where tiles go. */
    @FunctionalInterface
    public interface Sink {
        void put(int level, int column, int row, byte[] jpeg) throws IOException;
    }

    /** @return the number of levels */
    public static int cut(Canvas canvas, Sink sink) throws IOException {
        TileLevel first = null;
        for (int top = 0; top < canvas.height(); top += ROWS) {
            int count = Math.min(ROWS, canvas.height() - top);
            List<Plane> rows = canvas.rows(top, count);
            if (first == null) {
                first = TileLevel.chain(canvas.width(), canvas.height(), rows.size() == 3 ? 3 : 1, sink);
            }
            byte[] bytes = PreviewPixels.of(rows, canvas.white(), false).bytes();
            int length = bytes.length / count;
            for (int row = 0; row < count; row++) {
                first.add(bytes, row * length);
            }
        }
        return first == null ? 0 : first.levels();
    }
}
