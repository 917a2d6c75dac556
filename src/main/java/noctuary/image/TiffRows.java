package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Rows of one strip or tile, unpacked, with what was stored as differences turned back (TIFF 6.0, section 14, and
 * technical note 3).
 */
final class TiffRows implements RowSource {
    private final TiffLayout layout;
    private final InputStream in;
    private final byte[] packed;
    private final byte[] sorted;
    private final int[] row;

    TiffRows(TiffLayout layout, InputStream in) {
        this.layout = layout;
        this.in = in;
        this.packed = new byte[(int) layout.rowBytes()];
        this.sorted = layout.predictor() == 3 ? new byte[packed.length] : null;
        this.row = new int[layout.blockWidth() * layout.bands()];
    }

    @Override
    public int[] next() throws IOException {
        if (in.readNBytes(packed, 0, packed.length) < packed.length) {
            throw new EOFException();
        }
        ByteOrder order = layout.order();
        byte[] stored = packed;
        if (sorted != null) {
            gather();
            stored = sorted;
            order = ByteOrder.BIG_ENDIAN;
        }
        unpack(ByteBuffer.wrap(stored).order(order));
        if (layout.predictor() == 2) {
            addUp();
        }
        if (layout.storedBits() == 32 && layout.bits() <= 32) {
            toFloats();
        }
        return row;
    }

    private void unpack(ByteBuffer stored) {
        switch (layout.bits()) {
            case 8 -> unpackBytes();
            case 16 -> unpackShorts(stored);
            case 32 -> stored.asIntBuffer().get(row);
            case 64 -> unpackDoubles(stored);
            default -> unpackBits();
        }
    }

    private void unpackBytes() {
        for (int i = 0; i < row.length; i++) {
            row[i] = packed[i] & 0xFF;
        }
    }

    private void unpackShorts(ByteBuffer stored) {
        for (int i = 0; i < row.length; i++) {
            row[i] = stored.getShort(2 * i) & 0xFFFF;
        }
    }

    private void unpackDoubles(ByteBuffer stored) {
        for (int i = 0; i < row.length; i++) {
            row[i] = Float.floatToRawIntBits((float) stored.getDouble(8 * i));
        }
    }

    /** Fewer than eight bits each, the heaviest first. */
    private void unpackBits() {
        int bits = layout.bits();
        for (int i = 0; i < row.length; i++) {
            int from = i * bits;
            row[i] = packed[from >> 3] >> 8 - bits - (from & 7) & (1 << bits) - 1;
        }
    }

    /** Every sample was stored as its distance from the same colour of the pixel before. */
    private void addUp() {
        int bands = layout.bands();
        int mask = layout.bits() == 8 ? 0xFF : layout.bits() == 16 ? 0xFFFF : -1;
        for (int i = bands; i < row.length; i++) {
            row[i] = row[i] + row[i - bands] & mask;
        }
    }

    /** The bytes of a row were sorted by their weight, heaviest first, and stored as distances. */
    private void gather() {
        int bands = layout.bands();
        for (int i = bands; i < packed.length; i++) {
            packed[i] += packed[i - bands];
        }
        int size = layout.bits() / 8;
        for (int i = 0; i < row.length; i++) {
            for (int b = 0; b < size; b++) {
                sorted[i * size + b] = packed[b * row.length + i];
            }
        }
    }

    /** Half floats and whole numbers become floating point of 32 bits. */
    private void toFloats() {
        if (!layout.floating()) {
            for (int i = 0; i < row.length; i++) {
                row[i] = Float.floatToRawIntBits((float) (row[i] & 0xFFFFFFFFL));
            }
        } else if (layout.bits() == 16) {
            for (int i = 0; i < row.length; i++) {
                row[i] = Float.floatToRawIntBits(HalfFloat.of(row[i]));
            }
        }
    }
}
