package noctuary.fits;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;

/** One data unit of a source as a stream, its padding made good with zeros; every byte passes the check sum. */
final class DataStream extends InputStream {
    private static final int PIECE = 1 << 16;

    private final ByteSource source;
    private final FitsChecksum checksum;
    private long left;
    private boolean dry;
    private ByteBuffer piece = ByteBuffer.allocate(0);

    DataStream(ByteSource source, long paddedBytes, FitsChecksum checksum) {
        this.source = source;
        this.left = paddedBytes;
        this.checksum = checksum;
    }

    @Override
    public int read() throws IOException {
        return refill() ? piece.get() & 0xff : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!refill()) {
            return -1;
        }
        int count = Math.min(length, piece.remaining());
        piece.get(into, offset, count);
        return count;
    }

    /** Passes what the reader left unread. */
    void drain() throws IOException {
        while (refill()) {
            piece.position(piece.limit());
        }
    }

    private boolean refill() throws IOException {
        if (piece.hasRemaining()) {
            return true;
        }
        if (left == 0) {
            return false;
        }
        int wanted = (int) Math.min(PIECE, left);
        piece = dry ? ByteBuffer.allocate(wanted) : source.next(wanted);
        if (!piece.hasRemaining()) {
            dry = true;
            piece = ByteBuffer.allocate(wanted);
        }
        checksum.accept(piece);
        left -= piece.remaining();
        return true;
    }
}
