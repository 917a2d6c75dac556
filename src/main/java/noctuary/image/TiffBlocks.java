package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/** Where the strips or tiles of a TIFF file lie, and their rows. */
final class TiffBlocks {
    private static final int MOST = 1 << 22;
    private static final int LONGEST_ROW = 1 << 30;
    private static final int MOST_TABLES = 1 << 20;
    private static final int MOST_JPEG = 1 << 30;

    private final TiffLayout layout;
    private final Bytes file;
    private final long[] places;
    private final long[] lengths;
    private final byte[] jpegTables;

    private TiffBlocks(TiffLayout layout, Bytes file, long[] places, long[] lengths, byte[] jpegTables) {
        this.layout = layout;
        this.file = file;
        this.places = places;
        this.lengths = lengths;
        this.jpegTables = jpegTables;
    }

    /** @throws EOFException when the file is too short for the pixels that it claims */
    static TiffBlocks of(TiffDirectory tags, TiffLayout layout, Bytes file)
            throws IOException, UnreadablePictureException {
        long count = (long) layout.blocksAcross() * layout.blocksDown() * layout.sheets();
        if (count > MOST || layout.rowBytes() > LONGEST_ROW) {
            throw new UnreadablePictureException("the picture is cut into too many or too long pieces", "save it anew");
        }
        boolean tiled = tags.has(324);
        long[] places = tags.numbers(tiled ? 324 : 273, (int) count);
        long[] lengths = layout.compression() == TiffCompression.NONE
                ? uncompressed(layout, (int) count)
                : tags.numbers(tiled ? 325 : 279, (int) count);
        if (places.length < count || lengths.length < count) {
            throw new EOFException();
        }
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = Math.max(0, Math.min(lengths[i], file.length() - Math.max(0, places[i])));
        }
        requireEnough(layout, lengths);
        return new TiffBlocks(layout, file, places, lengths, tags.raw(347, MOST_TABLES));
    }

    /** Writers disagree about the length of the last strip, so it follows from the rows. */
    private static long[] uncompressed(TiffLayout layout, int count) {
        long[] lengths = new long[count];
        int perSheet = layout.blocksAcross() * layout.blocksDown();
        Arrays.setAll(lengths, i -> {
            int top = i % perSheet / layout.blocksAcross() * layout.blockHeight();
            return layout.rowBytes() * Math.min(layout.blockHeight(), layout.height() - top);
        });
        return lengths;
    }

    private static void requireEnough(TiffLayout layout, long[] lengths) throws EOFException {
        double packed = 0;
        for (long length : lengths) {
            packed += length;
        }
        double plain = (double) layout.rowBytes() * layout.height() * layout.blocksAcross() * layout.sheets();
        if (plain > packed * layout.compression().mostRatio()) {
            throw new EOFException();
        }
    }

    /** Rows of the block with all its colours, whether or not they are stored together. */
    RowSource rows(int block) throws IOException {
        if (!layout.planar()) {
            return sheet(block);
        }
        RowSource[] sheets = new RowSource[layout.samples()];
        for (int s = 0; s < sheets.length; s++) {
            sheets[s] = sheet(s * layout.blocksAcross() * layout.blocksDown() + block);
        }
        int[] row = new int[layout.blockWidth() * sheets.length];
        return () -> {
            for (int s = 0; s < sheets.length; s++) {
                spread(sheets[s].next(), row, s, sheets.length);
            }
            return row;
        };
    }

    private static void spread(int[] samples, int[] into, int from, int apart) {
        for (int i = 0, at = from; i < samples.length; i++, at += apart) {
            into[at] = samples[i];
        }
    }

    private RowSource sheet(int i) throws IOException {
        if (layout.compression() == TiffCompression.JPEG) {
            return new TiffJpeg(layout, jpegTables, file.read(places[i], (int) Math.min(MOST_JPEG, lengths[i])));
        }
        InputStream packed = new BytesStream(file, new long[] {places[i]}, new long[] {lengths[i]});
        return new TiffRows(
                layout, layout.compression().open(layout.lightestBitFirst() ? new ReversedStream(packed) : packed));
    }
}
