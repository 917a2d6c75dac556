package noctuary.demo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** A processed picture made from a stack by the steps its entry names. */
final class Picture {
    private static final float QUALITY = 0.88f;
    private static final double BACKGROUND = 0.25;
    private static final double WHITE = 0.9994;

    private Picture() {}

    static void write(Path file, int[][] stack, int width, PlannedEntry.Picture steps) {
        int height = stack[0].length / width;
        double[] background = new double[stack.length];
        double white = 0;
        for (int p = 0; p < stack.length; p++) {
            int[] sorted = stack[p].clone();
            Arrays.sort(sorted);
            background[p] = sorted[(int) (sorted.length * BACKGROUND)];
            white += (sorted[(int) (sorted.length * WHITE)] - background[p]) / stack.length;
        }
        float[][] planes = new float[stack.length][];
        for (int p = 0; p < stack.length; p++) {
            planes[p] = stretched(stack[p], background[p], white, steps);
            quieten(planes[p], width, height, steps.smooth());
        }
        BufferedImage image = new BufferedImage(
                width, height, planes.length == 3 ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int at = (height - 1 - y) * width + x;
                if (planes.length == 3) {
                    image.setRGB(
                            x, y, byteOf(planes[0][at]) << 16 | byteOf(planes[1][at]) << 8 | byteOf(planes[2][at]));
                } else {
                    image.getRaster().setSample(x, y, 0, byteOf(planes[0][at]));
                }
            }
        }
        save(file, image);
    }

    /** Background brought to one level, asinh stretch, black point. */
    private static float[] stretched(int[] counts, double background, double white, PlannedEntry.Picture steps) {
        double top = asinh(steps.stretch());
        double floor = 0.07 - steps.black();
        float[] plane = new float[counts.length];
        for (int at = 0; at < counts.length; at++) {
            double v = asinh(steps.stretch() * (counts[at] - background) / white) / top;
            plane[at] = (float) (floor + (1 - floor) * v);
        }
        return plane;
    }

    private static double asinh(double v) {
        return Math.signum(v) * StrictMath.log(Math.abs(v) + Math.sqrt(v * v + 1));
    }

    /** Blends in the smoothed plane, less so where the two differ by more than noise, until the strength nears 1. */
    private static void quieten(float[] plane, int width, int height, double strength) {
        if (strength == 0) {
            return;
        }
        float[] smooth = Blur.median(plane, width, height, strength > 0.6 ? 3 : 1);
        Blur.gaussian(smooth, width, height, 0.6 + strength);
        for (int at = 0; at < plane.length; at++) {
            double keep = Math.min(1, Math.abs(plane[at] - smooth[at]) * 40 * (1 - strength));
            plane[at] = (float) (plane[at] + strength * (1 - keep) * (smooth[at] - plane[at]));
        }
    }

    private static int byteOf(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(255 * value)));
    }

    private static void save(Path file, BufferedImage image) {
        String form = file.toString().endsWith(".png") ? "png" : "jpeg";
        ImageWriter writer = ImageIO.getImageWritersByFormatName(form).next();
        try {
            Files.deleteIfExists(file);
            try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
                ImageWriteParam param = writer.getDefaultWriteParam();
                if (form.equals("jpeg")) {
                    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
                    param.setCompressionQuality(QUALITY);
                }
                writer.setOutput(out);
                writer.write(null, new IIOImage(image, null, null), param);
            }
        } catch (IOException e) {
            throw new IllegalStateException(file + " was not written", e);
        } finally {
            writer.dispose();
        }
    }
}
