package noctuary.site;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import noctuary.site.SiteContent.Picture;
import noctuary.site.SiteContent.Size;

/** Pictures of the fixture: a glow among stars, in three widths. */
final class FixturePictures {
    private static final int[] WIDTHS = {320, 900, 1600};

    private FixturePictures() {}

    static Map<String, Map<String, Picture>> all() {
        Map<String, Map<String, Picture>> all = new LinkedHashMap<>();
        all.put("pinwheel", pictures("pinwheel", "stack"));
        all.put("short-tube", pictures("short-tube", "stack"));
        all.put("long-tube", pictures("long-tube", "stack", "gentle"));
        all.put("dumbbell", pictures("dumbbell", "stack"));
        return all;
    }

    private static Map<String, Picture> pictures(String slug, String... names) {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        for (String name : names) {
            List<Size> sizes = new java.util.ArrayList<>();
            for (int width : WIDTHS) {
                sizes.add(new Size("pictures/" + slug + "/" + name + "-" + width + ".jpg", width, width * 3 / 4));
            }
            pictures.put(name, new Picture(FixtureFrames.WIDTH, FixtureFrames.HEIGHT, sizes));
        }
        return pictures;
    }

    /** Writes every picture below the folder; slow ones only where looks matter. */
    static void write(Path output, boolean beautiful) throws IOException {
        for (var entry : all().entrySet()) {
            for (var picture : entry.getValue().entrySet()) {
                for (Size size : picture.getValue().sizes()) {
                    Path file = output.resolve(size.path());
                    Files.createDirectories(file.getParent());
                    int width = beautiful ? size.width() : 4;
                    int seed = entry.getKey().hashCode();
                    ImageIO.write(paint(width, width * 3 / 4, seed, picture.getKey()), "jpg", file.toFile());
                }
            }
        }
    }

    private static BufferedImage paint(int width, int height, int seed, String name) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        double warm = name.equals("stack") ? 0.75 : 1.1;
        double[] stars = new Random(seed).doubles(1200).toArray();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double dx = (double) x / width - 0.5;
                double dy = (y - height / 2.0) / width;
                double r = Math.hypot(dx, dy * 1.5);
                double swirl = Math.sin(9 * r * 6.28 + 3 * Math.atan2(dy, dx)) * 0.5 + 0.5;
                double glow = Math.exp(-r * r / 0.03) * (0.5 + 0.5 * swirl);
                image.setRGB(x, y, colour(0.07 + glow * 0.75 * warm, 0.07 + glow * 0.35, 0.08 + glow * 0.4));
            }
        }
        for (int i = 0; i + 2 < stars.length; i += 3) {
            dot(
                    image,
                    stars[i] * width,
                    stars[i + 1] * height,
                    width / 1600.0 * (0.8 + 4 * Math.pow(stars[i + 2], 12)));
        }
        return image;
    }

    private static void dot(BufferedImage image, double cx, double cy, double radius) {
        int reach = (int) Math.ceil(3 * radius) + 1;
        for (int y = (int) cy - reach; y <= cy + reach; y++) {
            for (int x = (int) cx - reach; x <= cx + reach; x++) {
                if (x < 0 || y < 0 || x >= image.getWidth() || y >= image.getHeight()) {
                    continue;
                }
                double light = Math.exp(-(Math.pow(x - cx, 2) + Math.pow(y - cy, 2)) / (radius * radius + 0.2));
                int old = image.getRGB(x, y) & 0xff;
                if (light * 255 > old) {
                    image.setRGB(x, y, colour(light, light * 0.97, light * 0.92));
                }
            }
        }
    }

    private static int colour(double r, double g, double b) {
        return level(r) << 16 | level(g) << 8 | level(b);
    }

    private static int level(double v) {
        return (int) Math.max(0, Math.min(255, Math.round(v * 255)));
    }
}
