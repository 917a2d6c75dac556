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
    private static final float QUALITY = 0.86f;

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
        boolean colour = planes.size() == 3;
        BufferedImage image =
                new BufferedImage(width, height, colour ? BufferedImage.TYPE_3BYTE_BGR : BufferedImage.TYPE_BYTE_GRAY);
        byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        int bands = colour ? 3 : 1;
        for (int p = 0; p < bands; p++) {
            for (int y = 0; y < height; y++) {
                int row = flip ? height - 1 - y : y;
                fill(planes.get(p), y, 255 / white, bytes, (row * width + 1) * bands - 1 - p, bands);
            }
        }
        return new PreviewPixels(image);
    }

    private static void fill(Plane plane, int y, float scale, byte[] bytes, int from, int step) {
        float[] row = new float[plane.width()];
        plane.copyRow(0, y, row.length, row, 0);
        for (int x = 0; x < row.length; x++) {
            bytes[from + x * step] = (byte) Math.max(0, Math.min(255, Math.round(row[x] * scale)));
        }
    }

    /** Progressive JPEG. */
    Preview.Encoded jpeg() {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return new Preview.Encoded(bytes.toByteArray(), image.getWidth(), image.getHeight());
    }
}
