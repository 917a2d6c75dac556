package noctuary.journal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.InflaterInputStream;
import org.jsoup.parser.Parser;

/** Everything a file's bytes can be read as: raw, wide characters, entities, percent signs, inflated pieces. */
final class Spelled {
    private static final int PNG_SIGNATURE = 0x89504E47;

    private Spelled() {}

    /** Lower-case text in every reading. */
    static List<String> of(byte[] bytes) {
        List<String> all = new ArrayList<>();
        readings(bytes, all);
        for (byte[] packed : packed(bytes)) {
            readings(packed, all);
        }
        return all.stream().map(text -> text.toLowerCase(Locale.ROOT)).toList();
    }

    /** Chunks of a PNG or segments of a JPEG up to its pixels, by name; empty for other files. */
    static List<String> parts(byte[] bytes) {
        List<String> parts = new ArrayList<>();
        if (bytes.length > 8 && ByteBuffer.wrap(bytes).getInt() == PNG_SIGNATURE) {
            for (int at = 8;
                    at + 12 <= bytes.length;
                    at += 12 + ByteBuffer.wrap(bytes).getInt(at)) {
                parts.add(new String(bytes, at + 4, 4, StandardCharsets.US_ASCII));
            }
        } else if (bytes.length > 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xD8) {
            for (int at = 2;
                    bytes[at + 1] != (byte) 0xDA;
                    at += 2 + (ByteBuffer.wrap(bytes).getShort(at + 2) & 0xFFFF)) {
                parts.add(String.format(Locale.ROOT, "%02X", bytes[at + 1]));
            }
        }
        return parts;
    }

    static String named(Path file) {
        return file.toString().toLowerCase(Locale.ROOT);
    }

    private static void readings(byte[] bytes, List<String> all) {
        String latin = new String(bytes, StandardCharsets.ISO_8859_1);
        String text = new String(bytes, StandardCharsets.UTF_8);
        all.add(latin);
        all.add(latin.replace("\0", ""));
        all.add(text);
        all.add(Parser.unescapeEntities(text, false));
        all.add(URLDecoder.decode(text.replaceAll("%(?![0-9A-Fa-f]{2})", "%25"), StandardCharsets.UTF_8));
    }

    private static List<byte[]> packed(byte[] bytes) {
        List<byte[]> found = new ArrayList<>();
        for (int at = 0; at + 2 < bytes.length; at++) {
            boolean zlib = (bytes[at] & 0x0F) == 8 && ((bytes[at] & 255) << 8 | bytes[at + 1] & 255) % 31 == 0;
            if (zlib && (bytes[at] & 0xF0) == 0x70) {
                byte[] inflated = inflated(Arrays.copyOfRange(bytes, at, bytes.length));
                if (inflated.length > 8) {
                    found.add(inflated);
                }
            }
        }
        return found;
    }

    private static byte[] inflated(byte[] packed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
            in.transferTo(out);
        } catch (IOException notPacked) {
            return out.toByteArray();
        }
        return out.toByteArray();
    }
}
