package noctuary.keep;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** One short word for many texts and numbers, told in order (SHA-256). Not for several threads. */
public final class Digest {
    private static final int ROOM = 1 << 13;

    private final MessageDigest sha;
    private byte[] waiting = new byte[ROOM];
    private int used;

    public Digest() {
        try {
            sha = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Adds a text and its end. */
    public Digest text(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        number(bytes.length);
        return bytes(bytes);
    }

    public Digest number(long number) {
        if (waiting.length - used < Long.BYTES) {
            flush();
        }
        for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
            waiting[used++] = (byte) (number >>> shift);
        }
        return this;
    }

    /** Adds bytes without their number. */
    public Digest bytes(byte[] bytes) {
        if (waiting.length - used < bytes.length) {
            flush();
            waiting = bytes.length > waiting.length ? Arrays.copyOf(waiting, bytes.length) : waiting;
        }
        System.arraycopy(bytes, 0, waiting, used, bytes.length);
        used += bytes.length;
        return this;
    }

    /** Of all so far; ends this digest. */
    public String hex() {
        flush();
        return HexFormat.of().formatHex(sha.digest());
    }

    private void flush() {
        sha.update(waiting, 0, used);
        used = 0;
    }
}
