package noctuary.image;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;

/** A PNG file with nothing in it but what its pixels need: no text, colour profile, place or date. */
public final class PlainPng {
    private static final Set<String> NEEDED = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final int SIGNATURE = 8;
    private static final int MOST_CHUNK = 1 << 28;

    private PlainPng() {}

    /** @throws IOException also when the file ends before its last part does */
    public static byte[] of(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            return of(Bytes.of(channel));
        }
    }

    private static byte[] of(Bytes file) throws IOException {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        plain.writeBytes(file.read(0, SIGNATURE));
        long at = SIGNATURE;
        String type = "";
        while (!type.equals("IEND")) {
            ByteBuffer head = ByteBuffer.wrap(file.read(at, 8));
            long length = head.getInt() & 0xFFFFFFFFL;
            type = new String(head.array(), 4, 4, StandardCharsets.ISO_8859_1);
            if (NEEDED.contains(type)) {
                plain.writeBytes(file.read(at, (int) Math.min(MOST_CHUNK, 12 + length)));
            }
            at += 12 + length;
        }
        return plain.toByteArray();
    }
}
