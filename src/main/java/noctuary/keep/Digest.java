package noctuary.keep;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * One short word for many texts and numbers, told in order: 128 bits by MurmurHash3 (x64; A. Appleby, public domain). It
 * tells apart whatever differs, but not what somebody made alike on purpose, which would only deceive their own site.
 * SHA-256 takes more than ten times as long under the quick compiler, which does not know the processor's instructions
 * for it. Not for several threads.
 */
public final class Digest {
    private static final int ROOM = 1 << 10;
    private static final int BLOCK = 2 * Long.BYTES;

    private static final long FIRST = 0x87c37b91114253d5L;
    private static final long SECOND = 0x4cf5ad432745937fL;

    private final byte[] waiting = new byte[ROOM];
    private int used;
    private long length;
    private long high;
    private long low;

    /** Adds a text and its end. */
    public Digest text(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        number(bytes.length);
        return bytes(bytes);
    }

    public Digest number(long number) {
        if (ROOM - used < Long.BYTES) {
            flush();
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
                flush();
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
        flush();
        length += used;
        Arrays.fill(waiting, used, BLOCK, (byte) 0);
        low ^= secondMixed(eight(Long.BYTES));
        high ^= firstMixed(eight(0));
        high ^= length;
        low ^= length;
        high += low;
        low += high;
        high = spread(high);
        low = spread(low);
        high += low;
        low += high;
        HexFormat hex = HexFormat.of();
        return hex.toHexDigits(high) + hex.toHexDigits(low);
    }

    /** Takes in all whole blocks that wait. */
    private void flush() {
        int at = 0;
        for (; at + BLOCK <= used; at += BLOCK) {
            high = Long.rotateLeft(high ^ firstMixed(eight(at)), 27) + low;
            high = high * 5 + 0x52dce729;
            low = Long.rotateLeft(low ^ secondMixed(eight(at + Long.BYTES)), 31) + high;
            low = low * 5 + 0x38495ab5;
        }
        length += at;
        used -= at;
        System.arraycopy(waiting, at, waiting, 0, used);
    }

    private static long firstMixed(long eight) {
        return Long.rotateLeft(eight * FIRST, 31) * SECOND;
    }

    private static long secondMixed(long eight) {
        return Long.rotateLeft(eight * SECOND, 33) * FIRST;
    }

    private static long spread(long bits) {
        long all = bits;
        all = (all ^ all >>> 33) * 0xff51afd7ed558ccdL;
        all = (all ^ all >>> 33) * 0xc4ceb9fe1a85ec53L;
        return all ^ all >>> 33;
    }

    private long eight(int at) {
        int first = four(at);
        int second = four(at + Integer.BYTES);
        return (long) second << Integer.SIZE | first & 0xffffffffL;
    }

    private int four(int at) {
        return waiting[at] & 0xff
                | (waiting[at + 1] & 0xff) << 8
                | (waiting[at + 2] & 0xff) << 16
                | waiting[at + 3] << 24;
    }
}
