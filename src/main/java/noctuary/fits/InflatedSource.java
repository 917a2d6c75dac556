package noctuary.fits;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;

/** A gzip file, inflated piece by piece, never as a whole. */
final class InflatedSource implements ByteSource {
    /** Deflate codes at most 258 bytes in 2 bits (RFC 1951 section 3.2.5), which is 1032 to 1. */
    static final long MOST_INFLATION = 1032;

    private final InputStream inflated;
    private final long most;
    private long position;
    private byte[] piece = new byte[0];

    InflatedSource(Path file) throws IOException {
        most = Files.size(file) * MOST_INFLATION;
        inflated = new GZIPInputStream(Files.newInputStream(file), 1 << 16);
    }

    @Override
    public ByteBuffer next(int length) throws IOException {
        if (piece.length < length) {
            piece = new byte[length];
        }
        int there = inflated.readNBytes(piece, 0, length);
        position += there;
        return ByteBuffer.wrap(piece, 0, there).slice();
    }

    @Override
    public long skip(long length) throws IOException {
        long skipped = 0;
        while (skipped < length) {
            int there = next((int) Math.min(1 << 16, length - skipped)).remaining();
            if (there == 0) {
                break;
            }
            skipped += there;
        }
        return skipped;
    }

    @Override
    public long remaining() {
        return Math.max(0, most - position);
    }

    @Override
    public boolean isPlain() {
        return false;
    }

    @Override
    public void close() throws IOException {
        inflated.close();
    }
}
