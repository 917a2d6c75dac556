package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.zip.InflaterInputStream;

/** Reads PNG row by row. */
final class PngPicture {
    /** First column and row of each pass, and the distance to the next (8 of the specification). */
    private static final int[][] PASSES = {
        {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
    };

    private static final int[][] WHOLE = {{0, 0, 1, 1}};
    private static final int MOST_RATIO = 1100;

    private final PngHeader header;
    private final PictureStore store;
    private final int[][] palette;
    private final int planes;

    private PngPicture(PngHeader header, int[][] palette) throws UnreadablePictureException {
        this.header = header;
        this.palette = palette;
        this.planes = palette.length > 0 ? palette.length : header.grey() ? 1 : 3;
        Upright upright = Upright.of(header.orientation(), header.width(), header.height());
        this.store = PictureStore.of(upright, planes, header.bits() == 16 ? 16 : 8);
    }

    static PictureImage read(Bytes file) throws IOException, UnreadablePictureException {
        PngHeader header = PngHeader.of(file);
        PictureFile.requireSize(header.width(), header.height());
        if (!header.sound()) {
            throw new IOException("it claims colours of kind " + header.colour() + " in " + header.bits() + " bits");
        }
        requireEnough(header, file);
        PngPicture picture =
                new PngPicture(header, header.colour() == PngHeader.PALETTE ? palette(header) : new int[0][]);
        try (InputStream pixels = new InflaterInputStream(new BytesStream(file, header.places(), header.lengths()))) {
            picture.take(pixels);
            pixels.read();
        }
        boolean alpha = header.colour() >= 4 || header.transparent();
        return picture.store.toPicture(alpha, Optional.empty(), Optional.empty());
    }

    private static void requireEnough(PngHeader header, Bytes file) throws EOFException {
        double packed = 0;
        for (long length : header.lengths()) {
            packed += length;
        }
        double plain = (double) header.width() * header.height() * header.samples() * header.bits() / 8;
        if (plain > Math.min(packed, file.length()) * MOST_RATIO) {
            throw new EOFException();
        }
    }

    /** One list when all colours are grey, else those of red, green and blue; colours that are not told are black. */
    private static int[][] palette(PngHeader header) {
        int[][] lists = new int[3][1 << header.bits()];
        boolean grey = true;
        for (int i = 0; i < Math.min(lists[0].length, header.palette().length / 3); i++) {
            for (int c = 0; c < 3; c++) {
                lists[c][i] = header.palette()[3 * i + c] & 255;
            }
            grey &= lists[0][i] == lists[1][i] && lists[0][i] == lists[2][i];
        }
        return grey ? new int[][] {lists[0]} : lists;
    }

    private void take(InputStream pixels) throws IOException {
        for (int[] pass : header.interlaced() ? PASSES : WHOLE) {
            int columns = (header.width() - pass[0] + pass[2] - 1) / pass[2];
            if (columns == 0) {
                continue;
            }
            PngRows rows = new PngRows(pixels, columns, header.samples(), header.bits());
            for (int y = pass[1]; y < header.height(); y += pass[3]) {
                put(new Run(pass[0], y, pass[2], columns), rows.next());
            }
        }
    }

    private void put(Run run, int[] row) {
        int scale = palette.length == 0 && header.bits() < 8 ? 255 / ((1 << header.bits()) - 1) : 1;
        for (int i = 0; scale > 1 && i < row.length; i++) {
            row[i] *= scale;
        }
        if (palette.length == 0) {
            for (int p = 0; p < planes; p++) {
                store.put(run, p, row, p, header.samples());
            }
            return;
        }
        int[] looked = new int[run.count()];
        for (int p = 0; p < planes; p++) {
            for (int i = 0; i < looked.length; i++) {
                looked[i] = palette[p][row[i]];
            }
            store.put(run, p, looked, 0, 1);
        }
    }
}
