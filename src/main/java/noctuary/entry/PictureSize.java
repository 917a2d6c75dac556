package noctuary.entry;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Width and height from the head of a PNG, GIF or JPEG file, so that a page keeps its place while pictures load.
 *
 * <p>Layouts: PNG specification, IHDR; GIF89a, logical screen descriptor; ITU-T T.81, start of frame.
 */
record PictureSize(int width, int height) {
    private static final int MOST_SEGMENTS = 200;

    /** Empty for other kinds, and for files that break off. */
    static Optional<PictureSize> of(Path file) {
        try (InputStream in = Files.newInputStream(file);
                var bytes = new DataInputStream(new BufferedInputStream(in))) {
            int magic = bytes.readUnsignedShort();
            Optional<PictureSize> size = switch (magic) {
                case 0x8950 -> png(bytes);
                case 0x4749 -> gif(bytes);
                case 0xFFD8 -> jpeg(bytes);
                default -> Optional.empty();
            };
            return size.filter(found -> found.width() > 0 && found.height() > 0);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<PictureSize> png(DataInputStream in) throws IOException {
        in.skipNBytes(14);
        return Optional.of(new PictureSize(in.readInt(), in.readInt()));
    }

    private static Optional<PictureSize> gif(DataInputStream in) throws IOException {
        in.skipNBytes(4);
        int width = Short.reverseBytes(in.readShort()) & 0xffff;
        int height = Short.reverseBytes(in.readShort()) & 0xffff;
        return Optional.of(new PictureSize(width, height));
    }

    private static Optional<PictureSize> jpeg(DataInputStream in) throws IOException {
        for (int i = 0; i < MOST_SEGMENTS; i++) {
            int marker = in.readUnsignedShort();
            int length = in.readUnsignedShort();
            int kind = marker & 0xff;
            boolean frame = kind >= 0xC0 && kind <= 0xCF && kind != 0xC4 && kind != 0xC8 && kind != 0xCC;
            if (frame) {
                in.readUnsignedByte();
                int height = in.readUnsignedShort();
                return Optional.of(new PictureSize(in.readUnsignedShort(), height));
            }
            in.skipNBytes(Math.max(0, length - 2));
        }
        return Optional.empty();
    }
}
