package noctuary.site;

import java.io.CharArrayWriter;
import java.nio.ByteBuffer;

/** What a template writes, on its way to a file: its units joined where it lies, mended and encoded. */
final class PageText extends CharArrayWriter {
    private static final int ROOM = 1 << 16;

    PageText() {
        super(ROOM);
    }

    /** All that was written, as a page has it, in UTF-8. */
    ByteBuffer page() {
        Unbroken.join(buf, count);
        return Legible.utf8(buf, count);
    }
}
