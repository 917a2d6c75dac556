package noctuary.image;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes whose lightest bit was written first (TIFF 6.0, tag 266). */
final class ReversedStream extends FilterInputStream {
    ReversedStream(InputStream in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        int stored = super.read();
        return stored < 0 ? stored : Integer.reverse(stored) >>> 24;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int count = super.read(into, offset, length);
        for (int i = offset; i < offset + count; i++) {
            into[i] = (byte) (Integer.reverse(into[i]) >>> 24);
        }
        return count;
    }
}
