package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;

/** Reads PNG, JPEG and TIFF pictures; looks at the size before it allocates. */
public final class PictureFile {
    /** The largest picture that is read. */
    public static final long MOST_PIXELS = 100_000_000;

    private static final Set<String> FORMATS = Set.of("png", "jpeg", "tif", "tiff");

    private PictureFile() {}

    /**
     * The first picture of the file.
     *
     * @throws UnreadablePictureException when there is none, it is damaged, or too large
     */
    public static PictureImage read(Path file) throws UnreadablePictureException {
        if (!Files.isRegularFile(file)) {
            throw new UnreadablePictureException("there is no such file", "check the name and the folder");
        }
        try {
            return readAny(file);
        } catch (EOFException e) {
            throw damaged("it ends too early");
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw damaged(e.getMessage());
        } catch (OutOfMemoryError e) {
            throw new UnreadablePictureException(
                    "the picture does not fit into memory", "give Java more memory, or save a smaller picture");
        }
    }

    /** Number of pixels that the picture claims to have; absent when it is none. Nothing is decoded. */
    public static OptionalLong pixels(Path file) {
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            ImageReader reader = readerOf(in);
            try {
                reader.setInput(in, true, true);
                return OptionalLong.of((long) reader.getWidth(0) * reader.getHeight(0));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException | UnreadablePictureException e) {
            return OptionalLong.empty();
        }
    }

    private static PictureImage readAny(Path file) throws IOException, UnreadablePictureException {
        Optional<TiffLayout> layout;
        Map<Long, Byte> changes;
        try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
            layout = TiffLayout.of(in);
            changes = layout.isPresent() ? layout.get().plain() : JpegProfile.hidden(in);
        }
        try (ImageInputStream in = new OverlaidStream(file.toFile(), changes)) {
            return read(in, layout);
        }
    }

    private static PictureImage read(ImageInputStream in, Optional<TiffLayout> layout)
            throws IOException, UnreadablePictureException {
        ImageReader reader = readerOf(in);
        try {
            reader.setInput(in, false, true);
            requireSize(reader.getWidth(0), reader.getHeight(0));
            Optional<TiffRows> rows = layout.isPresent() ? Optional.of(new TiffRows(layout.get())) : Optional.empty();
            return new PictureDecoder(reader, in.length(), rows).decode();
        } finally {
            reader.dispose();
        }
    }

    private static ImageReader readerOf(ImageInputStream in) throws IOException, UnreadablePictureException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            if (FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                return reader;
            }
            reader.dispose();
        }
        throw new UnreadablePictureException(
                "this is no PNG, JPEG or TIFF picture", "save the picture as PNG, JPEG or TIFF");
    }

    private static void requireSize(int width, int height) throws UnreadablePictureException {
        if (width < 1 || height < 1) {
            throw damaged("it claims " + width + " x " + height + " pixels");
        }
        if ((long) width * height > MOST_PIXELS) {
            throw new UnreadablePictureException(
                    "the picture claims " + width + " x " + height + " pixels; " + MOST_PIXELS / 1_000_000
                            + " megapixels are the limit",
                    "save a smaller copy");
        }
    }

    static UnreadablePictureException damaged(String detail) {
        return new UnreadablePictureException(
                "the picture is damaged" + (detail == null ? "" : ": " + detail), "save it again from its source");
    }
}
