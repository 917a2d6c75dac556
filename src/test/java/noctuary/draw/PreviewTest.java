package noctuary.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import noctuary.draw.Preview.Encoded;
import noctuary.image.Mosaic;
import noctuary.image.PictureImage;
import noctuary.image.Plane;
import noctuary.noise.SimulatedFrame;
import org.junit.jupiter.api.Test;

class PreviewTest {
    private static Plane frame() {
        return new SimulatedFrame(600, 400, 3)
                .sky(900, 20, 0)
                .stars(150, 3, 40)
                .whiteNoise(8)
                .toSixteenBit();
    }

    private static BufferedImage decode(Encoded encoded) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(encoded.bytes()));
    }

    private static int grey(BufferedImage image, int x, int y) {
        return image.getRaster().getSample(x, y, 0);
    }

    @Test
    void widthsAreKeptAndNothingIsEnlarged() throws IOException {
        List<Encoded> found = Preview.ofLinear(List.of(frame()), Optional.empty(), 150, 300, 5000);
        assertThat(found).extracting(Encoded::width).containsExactly(150, 300, 600);
        assertThat(found).extracting(Encoded::height).containsExactly(100, 200, 400);
        assertThat(decode(found.get(1)).getWidth()).isEqualTo(300);
    }

    @Test
    void sameInputSameBytesAndNothingButPixels() {
        Encoded one = Preview.ofLinear(List.of(frame()), Optional.empty(), 300).get(0);
        Encoded two = Preview.ofLinear(List.of(frame()), Optional.empty(), 300).get(0);
        assertThat(one.bytes()).isEqualTo(two.bytes());
        String text = new String(one.bytes(), StandardCharsets.ISO_8859_1);
        assertThat(text).doesNotContain("Exif", "ICC_PROFILE", "http", "Java");
    }

    @Test
    void firstFitsRowIsAtTheBottomAndFirstPictureRowOnTop() throws IOException {
        float[] pixels = new float[64 * 64];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = 100 + i % 5 + (i / 64 < 8 ? 200 : 0);
        }
        Plane plane = Plane.of(64, 64, pixels);
        BufferedImage linear =
                decode(Preview.ofLinear(List.of(plane), Optional.empty(), 64).get(0));
        assertThat(grey(linear, 32, 61)).isGreaterThan(grey(linear, 32, 2) + 100);
        PictureImage picture = new PictureImage(64, 64, List.of(plane), 8, 400, false, java.util.Optional.empty());
        BufferedImage shown = decode(Preview.ofPicture(picture, 64).get(0));
        assertThat((double) grey(shown, 32, 2)).isCloseTo(302 * 255 / 400.0, within(4.0));
        assertThat((double) grey(shown, 32, 40)).isCloseTo(102 * 255 / 400.0, within(4.0));
    }

    @Test
    void mosaicBecomesColour() throws IOException {
        Plane mosaic = new SimulatedFrame(600, 400, 4)
                .sky(900, 0, 0)
                .stars(150, 3, 60)
                .grbg(0.5, 1, 0.8)
                .whiteNoise(8)
                .toSixteenBit();
        Encoded found =
                Preview.ofLinear(List.of(mosaic), Optional.of(Mosaic.GRBG), 200).get(0);
        BufferedImage image = decode(found);
        assertThat(image.getRaster().getNumBands()).isEqualTo(3);
        double[] mean = new double[3];
        for (int i = 0; i < 200 * found.height(); i++) {
            for (int c = 0; c < 3; c++) {
                mean[c] += image.getRaster().getSample(i % 200, i / 200, c) / (200.0 * found.height());
            }
        }
        assertThat(mean[0]).isBetween(20.0, 45.0).isCloseTo(mean[1], within(4.0));
        assertThat(mean[2]).isCloseTo(mean[1], within(4.0));
    }

    @Test
    void oddPlanesNeverThrow() {
        for (float value : new float[] {0, 3, Float.NaN}) {
            Plane plane = Plane.of(1, 1, new float[] {value});
            assertThat(Preview.ofLinear(List.of(plane), Optional.of(Mosaic.RGGB), 480))
                    .hasSize(1);
            assertThat(Preview.ofLinear(List.of(plane, plane, plane), Optional.empty(), 480))
                    .hasSize(1);
        }
        Plane wide = Plane.of(3000, 1, new float[3000]);
        assertThat(Preview.ofLinear(List.of(wide), Optional.empty(), 480).get(0).height())
                .isEqualTo(1);
    }
}
