package noctuary.entry;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file as text with line feeds only and no byte-order mark.
 *
 * @param cut more was in the file than is read
 */
record NoteText(String text, boolean cut) {
    /** Bytes of a note that are read at most. */
    static final int LONGEST = 1 << 20;

    private static final String REPLACEMENT = "\uFFFD";

    static NoteText read(Path path, Margin margin) {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes(LONGEST + 1);
        } catch (IOException e) {
            margin.fault(0, "", "this file cannot be read", "check that you may read it");
            return new NoteText("", true);
        }
        boolean cut = bytes.length > LONGEST;
        if (cut) {
            margin.fault(
                    0,
                    "",
                    "this file is larger than 1 MB; only its keys were read",
                    "keep frames and pictures in files of their own");
        }
        return new NoteText(decode(bytes, margin), cut);
    }

    private static String decode(byte[] bytes, Margin margin) {
        if (bytes.length >= 2 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe && (bytes[0] & 0xff) >= 0xfe) {
            margin.fault(0, "", "this file is saved as UTF-16", "save it as UTF-8");
            return new String(bytes, StandardCharsets.UTF_16).replaceAll("\r\n?", "\n");
        }
        StringBuilder text = new StringBuilder(bytes.length);
        int start = 0;
        int line = 1;
        for (int i = 0; i <= bytes.length; i++) {
            if (i == bytes.length || bytes[i] == '\n' || bytes[i] == '\r' && next(bytes, i) != '\n') {
                text.append(line(bytes, start, i, line, margin)).append(i == bytes.length ? "" : "\n");
                start = i + 1;
                line++;
            }
        }
        boolean marked = text.length() > 0 && text.charAt(0) == '\uFEFF';
        return marked ? text.substring(1) : text.toString();
    }

    private static int next(byte[] bytes, int i) {
        return i + 1 < bytes.length ? bytes[i + 1] : -1;
    }

    private static String line(byte[] bytes, int start, int end, int number, Margin margin) {
        int stop = end > start && bytes[end - 1] == '\r' ? end - 1 : end;
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        try {
            return decoder.decode(ByteBuffer.wrap(bytes, start, stop - start)).toString();
        } catch (CharacterCodingException e) {
            margin.fault(number, "", "bytes that are not UTF-8, shown as " + REPLACEMENT, "save the file as UTF-8");
            return new String(bytes, start, stop - start, StandardCharsets.UTF_8);
        }
    }
}
