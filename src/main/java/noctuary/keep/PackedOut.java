package noctuary.keep;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes in the making: numbers, texts. */
final class PackedOut {
    private static final int ROOM = 256;

    private byte[] bytes = new byte[ROOM];
    private int used;

    void octet(int value) {
        room(1);
        bytes[used++] = (byte) value;
    }

    /** A number from 0, small ones in fewer bytes. */
    void count(int value) {
        int left = value;
        while ((left & ~0x7f) != 0) {
            octet(left & 0x7f | 0x80);
            left >>>= 7;
        }
        octet(left);
    }

    void whole(long value) {
        room(Long.BYTES);
        for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
            bytes[used++] = (byte) (value >>> shift);
        }
    }

    void text(String text) {
        block(text.getBytes(StandardCharsets.UTF_8));
    }

    void block(byte[] block) {
        part(block, 0, block.length);
    }

    void part(byte[] block, int from, int length) {
        count(length);
        room(length);
        System.arraycopy(block, from, bytes, used, length);
        used += length;
    }

    byte[] bytes() {
        return Arrays.copyOf(bytes, used);
    }

    private void room(int more) {
        if (bytes.length - used < more) {
            bytes = Arrays.copyOf(bytes, Math.max(used + more, 2 * bytes.length));
        }
    }
}
