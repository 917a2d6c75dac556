package noctuary.draw;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import noctuary.image.PictureFile;

/** A keeper's picture with its pixels only: place, device and date that cameras write into files are left behind. */
public final class PlainCopy {
    private static final Set<String> FORMATS = Set.of("png", "jpeg", "gif");

    private PlainCopy() {}

    /** The picture written anew in its own format; nothing when it is damaged, too large or of another format. */
    public static Optional<byte[]> of(Path picture) {
        try (ImageInputStream in = new FileImageInputStream(picture.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            return readers.hasNext() ? copy(readers.next(), in) : Optional.empty();
        } catch (IOException | RuntimeException damaged) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> copy(ImageReader reader, ImageInputStream in) throws IOException {
        try {
            String format = reader.getFormatName().toLowerCase(Locale.ROOT);
            reader.setInput(in, true, true);
            boolean tooLarge = (long) reader.getWidth(0) * reader.getHeight(0) > PictureFile.MOST_PIXELS;
            if (!FORMATS.contains(format) || tooLarge) {
                return Optional.empty();
            }
            BufferedImage pixels = reader.read(0);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            return ImageIO.write(pixels, format, bytes) ? Optional.of(bytes.toByteArray()) : Optional.empty();
        } finally {
            reader.dispose();
        }
    }
}
