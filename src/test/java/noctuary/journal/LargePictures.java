package noctuary.journal;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import noctuary.fact.Problem;
import noctuary.measure.SmallJournal;

/**
 * Pictures of 10,000 x 10,000 pixels, TIFF and PNG in 16-bit colour and JPEG, written into a journal with {@code write
 * FOLDER}, then rendered with {@code render FOLDER}: reading, measuring, comparing, previews, tiles and laying them on
 * each other. Run the latter with {@code -Xmx1536m}; the former needs 2 GB.
 */
public final class LargePictures {
    private static final int SIDE = 10_000;

    private LargePictures() {}

    public static void main(String[] args) throws IOException, RefusedException {
        Path root = Path.of(args[1]);
        if (args[0].equals("write")) {
            write(root);
            return;
        }
        long start = System.nanoTime();
        Rendering.Outcome outcome = Rendering.render(root, root.resolve("output"), Progress.SILENT);
        outcome.problems().stream()
                .filter(Problem::isFault)
                .forEach(p -> System.out.println(p.where() + ": " + p.what()));
        try (var files = Files.walk(root.resolve("output"))) {
            System.out.printf(
                    Locale.ROOT,
                    "%d pictures, %d tiles, %.0f s, heap %d MB%n",
                    outcome.files(),
                    files.filter(f -> f.toString().contains("-tiles"))
                            .filter(Files::isRegularFile)
                            .count(),
                    (System.nanoTime() - start) * 1e-9,
                    Runtime.getRuntime().maxMemory() >> 20);
        }
    }

    private static void write(Path root) throws IOException {
        SmallJournal journal = new SmallJournal(root);
        String last = "tiff";
        for (String format : new String[] {"tiff", "png", "jpeg"}) {
            String picture = "large." + format;
            journal.entry(
                    format,
                    "title: Large " + format,
                    "target: M 27",
                    "exposure: [{count: 1, seconds: 60}]",
                    "versions:",
                    "  - {name: large, image: " + picture + ", from: stack, steps: []}",
                    "  - {name: other, image: ../" + last + "/large." + last + ", from: large, steps: []}");
            last = format;
            File file = root.resolve("entries").resolve(format).resolve(picture).toFile();
            ImageIO.write(painted(!format.equals("jpeg")), format, file);
        }
    }

    private static BufferedImage painted(boolean sixteen) {
        BufferedImage image = sixteen ? sixteenBits() : new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_3BYTE_BGR);
        WritableRaster raster = image.getRaster();
        int white = sixteen ? 65535 : 255;
        int[] row = new int[3 * SIDE];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                double star = 0;
                int cx = x / 250 * 250 + (x / 250 * 7919 + y / 250 * 104_729) % 180 + 30;
                int cy = y / 250 * 250 + (x / 250 * 611_953 + y / 250 * 1299) % 180 + 30;
                double r2 = (x - cx) * (double) (x - cx) + (y - cy) * (double) (y - cy);
                star = r2 < 400 ? 0.5 * Math.exp(-r2 / 5) : 0;
                int noise = (x * 31 ^ y * 17) * 0x9E3779B1 >>> 22;
                for (int c = 0; c < 3; c++) {
                    row[3 * x + c] = (int) Math.min(white, white * (0.1 + star + noise / 40_000.0));
                }
            }
            raster.setPixels(0, y, SIDE, 1, row);
        }
        return image;
    }

    private static BufferedImage sixteenBits() {
        ComponentColorModel model = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), false, false, Transparency.OPAQUE, DataBuffer.TYPE_USHORT);
        return new BufferedImage(model, model.createCompatibleWritableRaster(SIDE, SIDE), false, null);
    }
}
