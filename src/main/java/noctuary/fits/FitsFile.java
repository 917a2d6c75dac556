package noctuary.fits;

import java.nio.file.Path;

/** Reads one FITS file, whatever its compression; never hangs, never allocates more than the file can fill. */
public final class FitsFile {
    private FitsFile() {}

    /**
     * The first image of the file with at least one pixel.
     *
     * @throws UnreadableException when there is none, or the file is damaged beyond use
     */
    public static FitsImage read(Path file) throws UnreadableException {
        throw new UnreadableException(file + " cannot be read yet", "wait");
    }

    /**
     * The header alone, without touching the pixels.
     *
     * @throws UnreadableException as {@link #read}
     */
    public static FrameHeader readHeader(Path file) throws UnreadableException {
        throw new UnreadableException(file + " cannot be read yet", "wait");
    }
}
