package noctuary.image;

import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Rows of a strip or tile that is a JPEG picture without its tables (TIFF technical note 2). */
final class TiffJpeg implements RowSource {
    private static final int MARKER = 2;

    private final Raster raster;
    private final boolean luma;
    private final int[] row;
    private int y;

    /** @param tables tag 347: a JPEG picture that holds tables only; may be empty */
    TiffJpeg(TiffLayout layout, byte[] tables, byte[] block) throws IOException {
        raster = decoded(layout, tables.length < 2 * MARKER ? block : joined(tables, block));
        luma = layout.colours() == TiffColours.LUMA;
        row = new int[layout.blockWidth() * layout.bands()];
        if (raster.getNumBands() != layout.bands()) {
            throw new IOException("a piece of it has " + raster.getNumBands() + " colours");
        }
    }

    private static byte[] joined(byte[] tables, byte[] block) {
        int head = tables.length - MARKER;
        byte[] whole = Arrays.copyOf(tables, head + Math.max(0, block.length - MARKER));
        System.arraycopy(block, MARKER, whole, head, whole.length - head);
        return whole;
    }

    private static Raster decoded(TiffLayout layout, byte[] jpeg) throws IOException {
        JpegHeader header = JpegHeader.of(Bytes.of(jpeg));
        if (header.width() > layout.blockWidth() || header.height() > layout.blockHeight()) {
            throw new IOException("a piece of it is larger than it claims");
        }
        ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
        try {
            JpegWarnings warnings = JpegWarnings.of(reader);
            reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(jpeg)), true, true);
            Raster raster = reader.readRaster(0, null);
            warnings.requireWhole();
            return raster;
        } finally {
            reader.dispose();
        }
    }

    @Override
    public int[] next() {
        int count = Math.min(raster.getWidth() * raster.getNumBands(), row.length);
        int[] stored = raster.getPixels(0, y++, raster.getWidth(), 1, (int[]) null);
        System.arraycopy(stored, 0, row, 0, count);
        if (luma) {
            Luma.toRgb(row, raster.getNumBands());
        }
        return row;
    }
}
