package noctuary.image;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;

/** One picture to planes, in bands of rows where the format allows it without decoding everything again. */
final class PictureDecoder {
    private static final int BAND_SAMPLES = 1 << 22;

    private final ImageReader reader;
    private final long fileLength;
    private final Optional<TiffRows> rows;
    private final List<String> warnings = new ArrayList<>();

    PictureDecoder(ImageReader reader, long fileLength, Optional<TiffRows> rows) {
        this.reader = reader;
        this.fileLength = fileLength;
        this.rows = rows;
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
    }

    PictureImage decode() throws IOException, UnreadablePictureException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        PictureSamples samples = null;
        int count = 0;
        for (int y = 0; y < height; y += count) {
            count = Math.min(count == 0 ? firstBand(width, height) : count, height - y);
            BufferedImage band = band(width, height, y, count);
            if (samples == null) {
                samples = PictureSamples.like(band, width, height, rows);
            }
            samples.take(band, y);
        }
        requireWhole();
        return samples.toPicture();
    }

    private BufferedImage band(int width, int height, int y, int count) throws IOException {
        if (count == height) {
            return reader.read(0);
        }
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceRegion(new Rectangle(0, y, width, count));
        return reader.read(0, param);
    }

    /**
     * PNG and JPEG decode from the start at every call, so they are read at once; a TIFF is read by whole strips, or by
     * any rows when the file is too long to be compressed.
     */
    private int firstBand(int width, int height) throws IOException {
        if (!reader.getFormatName().toLowerCase(Locale.ROOT).startsWith("tif")) {
            return height;
        }
        int wanted = Math.max(1, BAND_SAMPLES / width);
        int strip = fileLength >= (long) width * height
                ? Math.min(wanted, reader.getTileHeight(0))
                : reader.getTileHeight(0);
        return Math.min(height, Math.max(strip, wanted / strip * strip));
    }

    /** JPEG decoding goes on with grey where the file ends; such a picture must not be measured. */
    private void requireWhole() throws UnreadablePictureException {
        for (String warning : warnings) {
            if (warning.toLowerCase(Locale.ROOT).contains("premature")) {
                throw PictureFile.damaged("it ends too early");
            }
        }
    }

    /** Whether the colours are looked up in a table. */
    static boolean hasPalette(BufferedImage image) {
        return image.getColorModel() instanceof IndexColorModel;
    }
}
