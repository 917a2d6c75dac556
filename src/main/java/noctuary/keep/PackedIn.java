package noctuary.keep;

import java.nio.charset.StandardCharsets;

/** Bytes being read; whatever does not fit is a {@link DamagedException}. */
final class PackedIn {
    /** Texts come back again and again: those read lately are given out once more. */
    private static final int LATELY = 1 << 10;

    private static final int LONGEST_TEXT_KEPT = 40;

    private final byte[] bytes;
    private final int end;
    private final String[] lately;
    private int at;

    PackedIn(byte[] bytes, int from, int length, String[] lately) {
        this.bytes = bytes;
        this.at = from;
        this.end = from + length;
        this.lately = lately;
    }

    PackedIn(byte[] bytes) {
        this(bytes, 0, bytes.length, texts());
    }

    static String[] texts() {
        return new String[LATELY];
    }

    int octet() {
        need(1);
        return bytes[at++] & 0xff;
    }

    int count() {
        int value = 0;
        for (int shift = 0; shift < Integer.SIZE; shift += 7) {
            int next = octet();
            value |= (next & 0x7f) << shift;
            if (next < 0x80) {
                return value;
            }
        }
        throw new DamagedException();
    }

    /** How many things follow, each of at least one byte. */
    int size() {
        int size = count();
        need(size);
        return size;
    }

    long whole() {
        need(Long.BYTES);
        long value = 0;
        for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
            value |= (bytes[at++] & 0xffL) << shift;
        }
        return value;
    }

    String text() {
        int length = size();
        int from = at;
        at += length;
        if (length > LONGEST_TEXT_KEPT) {
            return new String(bytes, from, length, StandardCharsets.UTF_8);
        }
        int hash = length;
        boolean plain = true;
        for (int i = from; i < at; i++) {
            hash = 31 * hash + bytes[i];
            plain &= bytes[i] >= 0;
        }
        int slot = (hash ^ hash >>> 15) & LATELY - 1;
        if (plain && lately[slot] != null && same(lately[slot], from, length)) {
            return lately[slot];
        }
        lately[slot] = new String(bytes, from, length, StandardCharsets.UTF_8);
        return lately[slot];
    }

    /** Where the next block begins, and passes it. */
    int pass(int length) {
        need(length);
        at += length;
        return at - length;
    }

    boolean done() {
        return at == end;
    }

    private boolean same(String text, int from, int length) {
        if (text.length() != length) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (text.charAt(i) != bytes[from + i]) {
                return false;
            }
        }
        return true;
    }

    private void need(int more) {
        if (more < 0 || more > end - at) {
            throw new DamagedException();
        }
    }
}
