package noctuary.site;

import java.io.CharArrayWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** What a template writes, on its way to a file: mended, its units joined where it lies, and encoded. */
final class PageText extends CharArrayWriter {
    private static final int ROOM = 1 << 16;

    PageText() {
        super(ROOM);
    }

    /** All that was written, as a page has it, in UTF-8. */
    ByteBuffer page() {
        count = Legible.mend(buf, count);
        Unbroken.join(buf, count);
        return ByteBuffer.wrap(new String(buf, 0, count).getBytes(StandardCharsets.UTF_8));
    }
}
