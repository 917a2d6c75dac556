package noctuary.fits;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;

/**
 * Reads one FITS file, plain, gzipped or tile-compressed; never hangs, never allocates more than the file can fill.
 *
 * <p>Messages name neither the file nor its folder: the caller knows them.
 */
public final class FitsFile {
    private FitsFile() {}

    /**
     * The first image of the file with at least one pixel.
     *
     * @throws UnreadableException when there is none, or the file is damaged beyond use
     */
    public static FitsImage read(Path file) throws UnreadableException {
        return open(file, source -> new ImageReader(source, ImageFinder.find(source)).read());
    }

    /**
     * The header alone, without touching the pixels.
     *
     * @throws UnreadableException as {@link #read}, as far as it can be told without the pixels
     */
    public static FrameHeader readHeader(Path file) throws UnreadableException {
        return open(file, source -> {
            ImageFinder.Found found = ImageFinder.find(source);
            Shape shape = Shape.of(found.unit().structure().axes());
            return HeaderReader.read(new CardIndex(found.cards()), shape.width(), shape.height(), found.oddities());
        });
    }

    private interface Reading<T> {
        T from(ByteSource source) throws IOException, UnreadableException;
    }

    /** Whatever goes wrong inside one file stays that file's problem. */
    private static <T> T open(Path file, Reading<T> reading) throws UnreadableException {
        try (ByteSource source = Gate.open(file)) {
            return reading.from(source);
        } catch (AccessDeniedException e) {
            throw new UnreadableException("may not be read", "give yourself permission to read it");
        } catch (IOException e) {
            throw new UnreadableException("is damaged or could not be read to its end", Hdu.COPY_AGAIN);
        } catch (OutOfMemoryError e) {
            throw new UnreadableException("is too large for the memory Java has left", "give Java more with -Xmx");
        } catch (RuntimeException | InternalError e) {
            throw new UnreadableException(
                    "is damaged in a way nobody foresaw (" + e.getClass().getSimpleName() + ")", Hdu.COPY_AGAIN);
        }
    }
}
