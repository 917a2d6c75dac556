package noctuary.draw;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import noctuary.image.PictureFile;
import noctuary.image.PictureImage;
import noctuary.image.PlainPng;
import noctuary.image.Turned;
import noctuary.image.UnreadablePictureException;

/**
 * A keeper's picture with its pixels only, upright: place, device and date that cameras write into files are left
 * behind.
 */
public final class PlainCopy {
    private static final float QUALITY = 0.9f;

    private PlainCopy() {}

    /**
     * The picture written anew in its own format: PNG, JPEG or GIF.
     *
     * @throws UnreadablePictureException when it is damaged, too large or of another format
     */
    public static byte[] of(Path picture) throws UnreadablePictureException {
        try (ImageInputStream in = new FileImageInputStream(picture.toFile())) {
            return switch (format(in)) {
                case "png" -> png(picture);
                case "jpeg" -> jpeg(picture);
                case "gif" -> gif(in);
                default ->
                    throw new UnreadablePictureException("this is no PNG, JPEG or GIF picture", "save it as one");
            };
        } catch (IOException | RuntimeException damaged) {
            throw new UnreadablePictureException(
                    "the picture is damaged: " + damaged.getMessage(), "save it again from its source");
        } catch (OutOfMemoryError e) {
            throw new UnreadablePictureException("the picture does not fit into memory", "save a smaller copy");
        }
    }

    private static String format(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        return readers.hasNext() ? readers.next().getFormatName().toLowerCase(Locale.ROOT) : "";
    }

    private static byte[] png(Path picture) throws IOException, UnreadablePictureException {
        PictureFile.read(picture);
        byte[] plain = PlainPng.of(picture);
        int orientation = PictureFile.orientation(picture);
        if (orientation == 1) {
            return plain;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(Turned.upright(ImageIO.read(new ByteArrayInputStream(plain)), orientation), "png", bytes);
        return bytes.toByteArray();
    }

    /** ImageIO turns the numbers of another colour profile into those of screens; it reads no inks. */
    private static byte[] jpeg(Path picture) throws IOException, UnreadablePictureException {
        PictureImage whole = PictureFile.read(picture);
        if (whole.conversion().isPresent()) {
            return PreviewPixels.of(whole.planes(), whole.white(), false).jpeg(QUALITY);
        }
        BufferedImage stored = ImageIO.read(picture.toFile());
        return PreviewPixels.of(Turned.upright(stored, PictureFile.orientation(picture)))
                .jpeg(QUALITY);
    }

    private static byte[] gif(ImageInputStream in) throws IOException, UnreadablePictureException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
        try {
            reader.setInput(in, true, true);
            if ((long) reader.getWidth(0) * reader.getHeight(0) > PictureFile.MOST_PIXELS) {
                throw new UnreadablePictureException(
                        "the picture is larger than 100 megapixels", "save a smaller copy");
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(reader.read(0), "gif", bytes);
            return bytes.toByteArray();
        } finally {
            reader.dispose();
        }
    }
}
