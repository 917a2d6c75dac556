package noctuary.draw;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import noctuary.image.Plane;

/** Eight-bit pixels, grey or colour, and their JPEG. */
final class PreviewPixels {
    /** Tried one after the other until the file is small enough. */
    private static final float[] QUALITIES = {0.86f, 0.8f, 0.74f, 0.66f, 0.58f, 0.5f, 0.42f, 0.34f};

    private static final float TILE_QUALITY = 0.84f;

    private final BufferedImage image;

    private PreviewPixels(BufferedImage image) {
        this.image = image;
    }

    /**
     * @param planes one or three, display values from 0 to {@code white}; missing is black
     * @param flip whether the first row is the bottom one
     */
    static PreviewPixels of(List<Plane> planes, float white, boolean flip) {
        int width = planes.get(0).width();
        int height = planes.get(0).height();
        int bands = planes.size() == 3 ? 3 : 1;
        BufferedImage image = blank(width, height, bands);
        byte[] bytes = bytes(image);
        for (int p = 0; p < bands; p++) {
            for (int y = 0; y < height; y++) {
                int row = flip ? height - 1 - y : y;
                fill(planes.get(p), y, 255 / white, bytes, (row * width + 1) * bands - 1 - p, bands);
            }
        }
        return new PreviewPixels(image);
    }

    /** As {@link #bytes} hands them out. */
    static PreviewPixels of(byte[] pixels, int width, int height, int bands) {
        BufferedImage image = blank(width, height, bands);
        System.arraycopy(pixels, 0, bytes(image), 0, pixels.length);
        return new PreviewPixels(image);
    }

    /** A decoded picture as it is. */
    static PreviewPixels of(BufferedImage image) {
        return new PreviewPixels(image);
    }

    private static BufferedImage blank(int width, int height, int bands) {
        int type = bands == 3 ? BufferedImage.TYPE_3BYTE_BGR : BufferedImage.TYPE_BYTE_GRAY;
        return new BufferedImage(width, height, type);
    }

    private static byte[] bytes(BufferedImage image) {
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    /** Grey, or blue, green and red of every pixel; row after row. */
    byte[] bytes() {
        return bytes(image);
    }

    private static void fill(Plane plane, int y, float scale, byte[] bytes, int from, int step) {
        float[] row = new float[plane.width()];
        plane.copyRow(0, y, row.length, row, 0);
        for (int x = 0; x < row.length; x++) {
            bytes[from + x * step] = (byte) Math.max(0, Math.min(255, Math.round(row[x] * scale)));
        }
    }

    /** Progressive JPEG, as good as {@code mostBytes} allow. */
    Preview.Encoded jpeg(int mostBytes) {
        byte[] bytes = {};
        for (float quality : QUALITIES) {
            bytes = encoded(quality, ImageWriteParam.MODE_DEFAULT);
            if (bytes.length <= mostBytes) {
                break;
            }
        }
        return new Preview.Encoded(bytes, image.getWidth(), image.getHeight());
    }

    byte[] jpeg(float quality) {
        return encoded(quality, ImageWriteParam.MODE_DEFAULT);
    }

    /** JPEG for a tile. */
    byte[] tile() {
        return encoded(TILE_QUALITY, ImageWriteParam.MODE_DISABLED);
    }

    private byte[] encoded(float quality, int progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            param.setProgressiveMode(progressive);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
