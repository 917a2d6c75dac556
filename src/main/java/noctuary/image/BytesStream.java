package noctuary.image;

import java.io.IOException;
import java.io.InputStream;

/** Some stretches of bytes, one after the other, as one stream. */
final class BytesStream extends InputStream {
    private static final int AT_ONCE = 1 << 16;

    private final Bytes source;
    private final long[] places;
    private final long[] lengths;
    private int stretch;
    private long within;
    private byte[] buffer = {};
    private int at;

    BytesStream(Bytes source, long[] places, long[] lengths) {
        this.source = source;
        this.places = places;
        this.lengths = lengths;
    }

    @Override
    public int read() throws IOException {
        return filled() ? buffer[at++] & 255 : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!filled()) {
            return -1;
        }
        int count = Math.min(length, buffer.length - at);
        System.arraycopy(buffer, at, into, offset, count);
        at += count;
        return count;
    }

    private boolean filled() throws IOException {
        while (at == buffer.length) {
            while (stretch < lengths.length && within == lengths[stretch]) {
                stretch++;
                within = 0;
            }
            if (stretch == lengths.length) {
                return false;
            }
            int count = (int) Math.min(AT_ONCE, lengths[stretch] - within);
            buffer = source.read(places[stretch] + within, count);
            within += count;
            at = 0;
        }
        return true;
    }
}
