package noctuary.keep;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.apache.commons.codec.digest.MurmurHash3;

/**
 * One short word for many texts and numbers, told in order: 128 bits by MurmurHash3, each stretch after the word of the one
 * before. It tells apart whatever differs, but not what somebody made alike on purpose, which would only deceive their own
 * site. A render takes it of some forty megabytes, and the quick compiler makes of SHA-256 thirty times the work. Not for
 * several threads.
 */
public final class Digest {
    private static final int ROOM = 1 << 11;

    private final byte[] waiting = new byte[ROOM];
    private int used;

    /** Adds a text and its end. */
    public Digest text(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        number(bytes.length);
        return bytes(bytes);
    }

    public Digest number(long number) {
        if (ROOM - used < Long.BYTES) {
            fold();
        }
        for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
            waiting[used++] = (byte) (number >>> shift);
        }
        return this;
    }

    /** Adds bytes without their number. */
    public Digest bytes(byte[] bytes) {
        int at = 0;
        while (at < bytes.length) {
            if (used == ROOM) {
                fold();
            }
            int part = Math.min(ROOM - used, bytes.length - at);
            System.arraycopy(bytes, at, waiting, used, part);
            used += part;
            at += part;
        }
        return this;
    }

    /** Of all so far; ends this digest. */
    public String hex() {
        long[] word = word();
        HexFormat hex = HexFormat.of();
        return hex.toHexDigits(word[0]) + hex.toHexDigits(word[1]);
    }

    /** The word of what waits stands for it from now on. */
    private void fold() {
        long[] word = word();
        used = 0;
        number(word[0]).number(word[1]);
    }

    private long[] word() {
        return MurmurHash3.hash128x64(waiting, 0, used, 0);
    }
}
