package noctuary.fits;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;

/** The bytes of one file from front to back, inflated where the file is packed. */
interface ByteSource extends Closeable {
    /**
     * The next {@code length} bytes, big-endian, fewer only at the end of the file. The buffer holds until the next
     * call.
     */
    ByteBuffer next(int length) throws IOException;

    /** Passes over bytes; the answer is how many there were. */
    long skip(long length) throws IOException;

    /** No more bytes than this can follow: exact for a plain file, an upper bound for a packed one. */
    long remaining() throws IOException;

    /** True when {@link #remaining} is exact. */
    boolean isPlain();
}
