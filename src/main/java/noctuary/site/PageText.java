package noctuary.site;

import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** What a template writes, on its way to a file: mended, its units joined and encoded where it lies. */
final class PageText extends Writer {
    private static final int ROOM = 1 << 16;

    private char[] text = new char[ROOM];
    private int used;

    @Override
    public void write(int c) {
        room(1);
        text[used++] = (char) c;
    }

    @Override
    public void write(char[] from, int at, int length) {
        room(length);
        System.arraycopy(from, at, text, used, length);
        used += length;
    }

    @Override
    public void write(String from, int at, int length) {
        room(length);
        from.getChars(at, at + length, text, used);
        used += length;
    }

    /** All that was written, as a page has it, in UTF-8. */
    ByteBuffer page() {
        used = Legible.mend(text, used);
        Unbroken.join(text, used);
        try {
            return StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text, 0, used));
        } catch (CharacterCodingException e) {
            throw new IllegalStateException("legible text has no halves of characters", e);
        }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}

    private void room(int more) {
        if (text.length - used < more) {
            text = Arrays.copyOf(text, Math.max(used + more, 2 * text.length));
        }
    }
}
