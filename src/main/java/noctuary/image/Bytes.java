package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.Arrays;

/** Bytes that are read at any place; safe for several threads. */
interface Bytes {
    long length();

    /**
     * {@code count} bytes from {@code at} on.
     *
     * @throws EOFException when some of them lie beyond the end
     */
    byte[] read(long at, int count) throws IOException;

    static Bytes of(FileChannel file) throws IOException {
        long length = file.size();
        return new Bytes() {
            @Override
            public long length() {
                return length;
            }

            @Override
            public byte[] read(long at, int count) throws IOException {
                require(at, count, length);
                ByteBuffer into = ByteBuffer.allocate(count);
                while (into.hasRemaining()) {
                    if (file.read(into, at + into.position()) < 0) {
                        throw new EOFException();
                    }
                }
                return into.array();
            }
        };
    }

    static Bytes of(byte[] bytes) {
        return new Bytes() {
            @Override
            public long length() {
                return bytes.length;
            }

            @Override
            public byte[] read(long at, int count) throws IOException {
                require(at, count, bytes.length);
                return Arrays.copyOfRange(bytes, (int) at, (int) at + count);
            }
        };
    }

    private static void require(long at, int count, long length) throws EOFException {
        if (at < 0 || count < 0 || at > length - count) {
            throw new EOFException();
        }
    }
}
