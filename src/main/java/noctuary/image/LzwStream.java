package noctuary.image;

import java.io.IOException;
import java.io.InputStream;

/** The LZW compression of TIFF 6.0, section 13: codes of 9 to 12 bits, heaviest bit first, widened one code early. */
final class LzwStream extends InputStream {
    private static final int CLEAR = 256;
    private static final int END = 257;
    private static final int FIRST = 258;
    private static final int MOST = 4096;

    private final InputStream codes;
    private final short[] before = new short[MOST];
    private final byte[] last = new byte[MOST];
    private final short[] length = new short[MOST];
    private final byte[] text = new byte[MOST];

    private int free = FIRST;
    private int width = 9;
    private int previous = -1;
    private int bits;
    private int bitCount;
    private int at;
    private int end;
    private boolean over;

    LzwStream(InputStream codes) {
        this.codes = codes;
        for (int i = 0; i < CLEAR; i++) {
            last[i] = (byte) i;
            length[i] = 1;
        }
    }

    @Override
    public int read() throws IOException {
        return filled() ? text[at++] & 255 : -1;
    }

    @Override
    public int read(byte[] into, int offset, int count) throws IOException {
        int done = 0;
        while (done < count && filled()) {
            int part = Math.min(count - done, end - at);
            System.arraycopy(text, at, into, offset + done, part);
            at += part;
            done += part;
        }
        return done == 0 && count > 0 ? -1 : done;
    }

    private boolean filled() throws IOException {
        while (at == end && !over) {
            int code = next();
            if (code == CLEAR) {
                free = FIRST;
                width = 9;
                previous = -1;
            } else if (code < 0 || code == END) {
                over = true;
            } else {
                spell(code);
            }
        }
        return at < end;
    }

    private void spell(int code) throws IOException {
        boolean known = code < free && code != CLEAR && code != END;
        if (!known && (code != free || previous < 0)) {
            throw new IOException("its compressed data make no sense");
        }
        if (known) {
            write(code);
        } else {
            write(previous);
            text[end] = text[0];
            end++;
        }
        if (previous >= 0 && free < MOST) {
            before[free] = (short) previous;
            last[free] = text[0];
            length[free] = (short) (length[previous] + 1);
            free++;
            width = free + 1 >= 2048 ? 12 : free + 1 >= 1024 ? 11 : free + 1 >= 512 ? 10 : 9;
        }
        previous = code;
    }

    private void write(int code) {
        at = 0;
        end = length[code];
        for (int i = end - 1, c = code; i >= 0; i--, c = before[c]) {
            text[i] = last[c];
        }
    }

    private int next() throws IOException {
        while (bitCount < width) {
            int more = codes.read();
            if (more < 0) {
                return -1;
            }
            bits = bits << 8 | more;
            bitCount += 8;
        }
        bitCount -= width;
        return bits >> bitCount & (1 << width) - 1;
    }
}
