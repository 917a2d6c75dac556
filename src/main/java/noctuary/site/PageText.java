package noctuary.site;

import java.io.Writer;
import java.nio.ByteBuffer;
import java.util.Arrays;

/** What a template writes, on its way to a file: mended, its units joined and encoded where it lies. */
final class PageText extends Writer {
    private static final int ROOM = 1 << 16;
    /** Of one character. */
    private static final int MOST_BYTES = 4;

    private char[] text = new char[ROOM];
    private int used;

    @Override
    public void write(int c) {
        room(1);
        text[used++] = (char) c;
    }

    @Override
    public void write(char[] from, int at, int length) {
        room(length);
        System.arraycopy(from, at, text, used, length);
        used += length;
    }

    @Override
    public void write(String from, int at, int length) {
        room(length);
        from.getChars(at, at + length, text, used);
        used += length;
    }

    /** All that was written, as a page has it, in UTF-8. */
    ByteBuffer page() {
        used = Legible.mend(text, used);
        Unbroken.join(text, used);
        byte[] bytes = new byte[used + used / 8];
        int at = 0;
        int to = 0;
        while (at < used) {
            if (bytes.length - to < MOST_BYTES) {
                bytes = Arrays.copyOf(bytes, 2 * bytes.length + MOST_BYTES);
            }
            if (text[at] < 0x80) {
                bytes[to++] = (byte) text[at++];
            } else {
                int c = Character.codePointAt(text, at, used);
                at += Character.charCount(c);
                to = encode(c, bytes, to);
            }
        }
        return ByteBuffer.wrap(bytes, 0, to);
    }

    /** A character beyond ASCII (RFC 3629, section 3). */
    private static int encode(int c, byte[] bytes, int at) {
        int to = at;
        if (c < 0x800) {
            bytes[to++] = (byte) (0xc0 | c >> 6);
        } else if (c < 0x10000) {
            bytes[to++] = (byte) (0xe0 | c >> 12);
            bytes[to++] = next(c >> 6);
        } else {
            bytes[to++] = (byte) (0xf0 | c >> 18);
            bytes[to++] = next(c >> 12);
            bytes[to++] = next(c >> 6);
        }
        bytes[to++] = next(c);
        return to;
    }

    private static byte next(int bits) {
        return (byte) (0x80 | bits & 0x3f);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}

    private void room(int more) {
        if (text.length - used < more) {
            text = Arrays.copyOf(text, Math.max(used + more, 2 * text.length));
        }
    }
}
