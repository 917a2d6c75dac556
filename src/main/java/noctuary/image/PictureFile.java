package noctuary.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads PNG, JPEG and TIFF pictures; looks at the size before it allocates. */
public final class PictureFile {
    /** The largest picture that is read. */
    public static final long MOST_PIXELS = 100_000_000;

    private PictureFile() {}

    /**
     * The first picture of the file, upright.
     *
     * @throws UnreadablePictureException when there is none, it is damaged, or too large
     */
    public static PictureImage read(Path file) throws UnreadablePictureException {
        if (!Files.isRegularFile(file)) {
            throw new UnreadablePictureException("there is no such file", "check the name and the folder");
        }
        try (FileChannel channel = FileChannel.open(file)) {
            return read(file, Bytes.of(channel));
        } catch (EOFException e) {
            throw damaged("it ends too early");
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw damaged(e.getMessage());
        } catch (OutOfMemoryError e) {
            throw new UnreadablePictureException(
                    "the picture does not fit into memory", "give Java more memory, or save a smaller picture");
        }
    }

    private static PictureImage read(Path file, Bytes bytes) throws IOException, UnreadablePictureException {
        return switch (PictureFormat.of(bytes)) {
            case PNG -> PngPicture.read(bytes);
            case JPEG -> JpegPicture.read(file.toFile(), bytes);
            case TIFF -> TiffPicture.read(bytes);
        };
    }

    /**
     * Bytes of memory that the picture takes while it is read, if it keeps to what it claims; 0 when it is none. Nothing
     * is decoded.
     */
    public static long memory(Path file) {
        try (FileChannel channel = FileChannel.open(file)) {
            return PictureFormat.memory(Bytes.of(channel));
        } catch (IOException | RuntimeException | UnreadablePictureException e) {
            return 0;
        }
    }

    /** Which side of the stored picture is up, as tag 274 of TIFF and Exif tells it: 1 to 8; 1 where nothing is told. */
    public static int orientation(Path file) {
        try (FileChannel channel = FileChannel.open(file)) {
            return PictureFormat.orientation(Bytes.of(channel));
        } catch (IOException | RuntimeException | UnreadablePictureException e) {
            return Upright.AS_STORED;
        }
    }

    static void requireSize(int width, int height) throws UnreadablePictureException {
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
