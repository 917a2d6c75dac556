package noctuary.site;

import java.nio.ByteBuffer;
import java.util.Arrays;

/**
 * Text in UTF-8 without what no page may hold: control characters other than white space, noncharacters, halves of pairs.
 * The keeper's words and file names can hold all of them. (HTML standard, section 13.2.3.5, preprocessing the input
 * stream.) A page is a hundred thousand characters, nearly all of them ASCII: these take one comparison and a look at a table.
 */
final class Legible {
    private static final char STRANGE = '\uFFFD';

    private static final int ASCII = 0x80;

    /** Most bytes of a character outside ASCII, for each of its chars. */
    private static final int WIDEST = 3;

    /** Of ASCII those that are allowed. */
    private static final boolean[] PLAIN = plain();

    private final char[] text;
    private final int length;
    private byte[] bytes;
    private int used;

    private Legible(char[] text, int length) {
        this.text = text;
        this.length = length;
        this.bytes = new byte[length + length / 16 + WIDEST];
    }

    /** @param length of the text, from the first character on */
    static ByteBuffer utf8(char[] text, int length) {
        Legible page = new Legible(text, length);
        page.encode();
        return ByteBuffer.wrap(page.bytes, 0, page.used);
    }

    private void encode() {
        int at = 0;
        while (at < length) {
            at = plain(at);
            if (at < length) {
                at = other(at);
            }
        }
    }

    /** Copies as many as are plain; where the first other one stands. */
    private int plain(int from) {
        room(length - from);
        boolean[] plain = PLAIN;
        byte[] to = bytes;
        int shift = used - from;
        int at = from;
        while (at < length && text[at] < ASCII && plain[text[at]]) {
            to[at + shift] = (byte) text[at];
            at++;
        }
        used = at + shift;
        return at;
    }

    /** One character that is no plain one; where the next stands. */
    private int other(int at) {
        int c = Character.codePointAt(text, at, length);
        put(isAllowed(c) ? c : STRANGE);
        return at + Character.charCount(c);
    }

    private void put(int c) {
        room(WIDEST + 1);
        if (c < ASCII) {
            bytes[used++] = (byte) c;
        } else if (c < 0x800) {
            bytes[used++] = (byte) (0xc0 | c >> 6);
            follow(c, 0);
        } else if (c < Character.MIN_SUPPLEMENTARY_CODE_POINT) {
            bytes[used++] = (byte) (0xe0 | c >> 12);
            follow(c, 6);
        } else {
            bytes[used++] = (byte) (0xf0 | c >> 18);
            follow(c, 12);
        }
    }

    /** The bytes after the first: six bits each (RFC 3629, section 3). */
    private void follow(int c, int highest) {
        for (int shift = highest; shift >= 0; shift -= 6) {
            bytes[used++] = (byte) (ASCII | c >> shift & 0x3f);
        }
    }

    private void room(int more) {
        if (bytes.length - used < more) {
            bytes = Arrays.copyOf(bytes, used + more + length / 16 + WIDEST);
        }
    }

    private static boolean[] plain() {
        boolean[] plain = new boolean[ASCII];
        for (int c = 0; c < plain.length; c++) {
            plain[c] = isAllowed(c);
        }
        return plain;
    }

    private static boolean isAllowed(int c) {
        boolean white = c == '\n' || c == '\t' || c == '\r' || c == '\f';
        boolean noncharacter = (c & 0xfffe) == 0xfffe || c >= 0xfdd0 && c <= 0xfdef;
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return white || !Character.isISOControl(c) && !noncharacter && !half;
    }
}
