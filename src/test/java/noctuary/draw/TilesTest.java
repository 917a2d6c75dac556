package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;

class TilesTest {
    private static final int WIDTH = 1301;
    private static final int HEIGHT = 1030;

    /** Dark on the left, light on the right, lighter downwards: every place has its own grey. */
    private static double grey(double x, double y) {
        return 20 + 180 * x / WIDTH + 50 * y / HEIGHT;
    }

    private static PictureImage picture(int planes) {
        float[] pixels = new float[WIDTH * HEIGHT];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (float) grey(i % WIDTH, i / WIDTH);
        }
        Plane plane = Plane.of(WIDTH, HEIGHT, pixels);
        return new PictureImage(
                WIDTH, HEIGHT, java.util.Collections.nCopies(planes, plane), 8, 255, false, java.util.Optional.empty());
    }

    private static Map<String, BufferedImage> cut(int planes) throws IOException {
        Map<String, BufferedImage> tiles = new TreeMap<>();
        int levels = Tiles.cut(
                Canvas.ofPicture(picture(planes)),
                (level, column, row, jpeg) ->
                        tiles.put(level + "/" + column + "_" + row, ImageIO.read(new ByteArrayInputStream(jpeg))));
        assertThat(levels).isEqualTo(3);
        return tiles;
    }

    @Test
    void everyLevelIsHalfOfTheOneBeforeUntilOneTileHoldsItAll() throws IOException {
        Map<String, BufferedImage> tiles = cut(1);
        assertThat(tiles.keySet())
                .containsExactlyElementsOf(List.of(
                        "0/0_0", "0/0_1", "0/0_2", "0/1_0", "0/1_1", "0/1_2", "0/2_0", "0/2_1", "0/2_2", "1/0_0",
                        "1/0_1", "1/1_0", "1/1_1", "2/0_0"));
        assertThat(tiles.get("0/2_2").getWidth()).isEqualTo(WIDTH - 2 * Tiles.SIDE);
        assertThat(tiles.get("0/2_2").getHeight()).isEqualTo(HEIGHT - 2 * Tiles.SIDE);
        assertThat(tiles.get("2/0_0").getWidth()).isEqualTo(326);
        assertThat(tiles.get("2/0_0").getHeight()).isEqualTo(258);
    }

    @Test
    void everyTileShowsItsOwnPlace() throws IOException {
        for (int planes : new int[] {1, 3}) {
            for (var each : cut(planes).entrySet()) {
                String[] name = each.getKey().split("[/_]");
                double times = Math.pow(2, Integer.parseInt(name[0]));
                BufferedImage tile = each.getValue();
                for (int y = 3; y < tile.getHeight(); y += 60) {
                    for (int x = 3; x < tile.getWidth(); x += 60) {
                        double px = (Integer.parseInt(name[1]) * Tiles.SIDE + x + 0.5) * times;
                        double py = (Integer.parseInt(name[2]) * Tiles.SIDE + y + 0.5) * times;
                        assertThat((double) tile.getRaster().getSample(x, y, 0))
                                .as(each.getKey())
                                .isCloseTo(grey(px, py), within(3.0));
                    }
                }
            }
        }
    }
}
