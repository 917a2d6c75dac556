package noctuary.draw;

import java.io.IOException;
import java.util.stream.IntStream;

/** One level of tiles, which takes rows and hands every two of them on as one row half as long. */
final class TileLevel {
    private static final int SIDE = Tiles.SIDE;

    private final int number;
    private final int width;
    private final int height;
    private final int bands;
    private final Tiles.Sink sink;
    private final TileLevel next;
    /** Rows of the tiles in the making. */
    private final byte[] strip;

    private int taken;

    private TileLevel(int number, int width, int height, int bands, Tiles.Sink sink) {
        this.number = number;
        this.width = width;
        this.height = height;
        this.bands = bands;
        this.sink = sink;
        this.strip = new byte[Math.min(SIDE, height) * width * bands];
        boolean last = Math.max(width, height) <= SIDE;
        this.next = last ? null : new TileLevel(number + 1, (width + 1) / 2, (height + 1) / 2, bands, sink);
    }

    static TileLevel chain(int width, int height, int bands, Tiles.Sink sink) {
        return new TileLevel(0, width, height, bands, sink);
    }

    int levels() {
        return next == null ? number + 1 : next.levels();
    }

    /** Takes the next row, {@code width} pixels from {@code from} on. */
    void add(byte[] row, int from) throws IOException {
        int length = width * bands;
        int at = taken % SIDE;
        System.arraycopy(row, from, strip, at * length, length);
        taken++;
        if (next != null && (taken % 2 == 0 || taken == height)) {
            int above = taken % 2 == 0 ? at - 1 : at;
            next.add(halved(above * length, at * length), 0);
        }
        if (taken % SIDE == 0 || taken == height) {
            cut(at + 1);
        }
    }

    private byte[] halved(int upper, int lower) {
        byte[] half = new byte[next.width * bands];
        for (int x = 0; x < next.width; x++) {
            int left = 2 * x * bands;
            int right = Math.min(2 * x + 1, width - 1) * bands;
            for (int b = 0; b < bands; b++) {
                int sum = (strip[upper + left + b] & 255)
                        + (strip[upper + right + b] & 255)
                        + (strip[lower + left + b] & 255)
                        + (strip[lower + right + b] & 255);
                half[x * bands + b] = (byte) (sum + 2 >> 2);
            }
        }
        return half;
    }

    private void cut(int rows) throws IOException {
        int columns = (width + SIDE - 1) / SIDE;
        byte[][] tiles = new byte[columns][];
        IntStream.range(0, columns).parallel().forEach(column -> tiles[column] = tile(column, rows));
        for (int column = 0; column < columns; column++) {
            sink.put(number, column, (taken - 1) / SIDE, tiles[column]);
        }
    }

    private byte[] tile(int column, int rows) {
        int from = column * SIDE;
        int across = Math.min(SIDE, width - from);
        byte[] pixels = new byte[across * rows * bands];
        for (int row = 0; row < rows; row++) {
            System.arraycopy(strip, (row * width + from) * bands, pixels, row * across * bands, across * bands);
        }
        return PreviewPixels.of(pixels, across, rows, bands).tile();
    }
}
