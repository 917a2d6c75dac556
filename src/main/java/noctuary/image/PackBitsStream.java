package noctuary.image;

import java.io.IOException;
import java.io.InputStream;

/** The byte runs of TIFF 6.0, section 9. */
final class PackBitsStream extends InputStream {
    private final InputStream packed;
    private int literals;
    private int repeats;
    private int repeated;

    PackBitsStream(InputStream packed) {
        this.packed = packed;
    }

    @Override
    public int read() throws IOException {
        while (literals == 0 && repeats == 0) {
            int head = packed.read();
            if (head < 0) {
                return -1;
            }
            if (head < 128) {
                literals = head + 1;
            } else if (head > 128) {
                repeats = 257 - head;
                repeated = packed.read();
            }
        }
        if (literals > 0) {
            literals--;
            return packed.read();
        }
        repeats--;
        return repeated;
    }
}
