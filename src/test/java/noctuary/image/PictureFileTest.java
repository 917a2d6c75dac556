package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files put together byte by byte as the PNG specification (W3C, second edition, 5 and 11) and TIFF 6.0 (sections 2 to
 * 9, 18, 19) say, so that reader and test share nothing but the standards; JPEG from the JDK's writer.
 */
class PictureFileTest {
    @TempDir
    Path folder;

    private PictureImage read(byte[] bytes) throws Exception {
        Path file = folder.resolve("picture");
        Files.write(file, bytes);
        return PictureFile.read(file);
    }

    private static float[] pixels(PictureImage picture, int plane) {
        float[] values = new float[picture.width() * picture.height()];
        for (int i = 0; i < values.length; i++) {
            values[i] = picture.planes().get(plane).at(i % picture.width(), i / picture.width());
        }
        return values;
    }

    @Test
    void sixteenBitGreyPngIsExact() throws Exception {
        PictureImage found =
                read(PictureBytes.png(2, 2, 16, 0, new byte[][] {{0, 0, 1, 2}, {(byte) 255, (byte) 255, (byte) 128, 0}
                }));
        assertThat(pixels(found, 0)).containsExactly(0, 258, 65535, 32768);
        assertThat(found.planes()).hasSize(1);
        assertThat(found.bitDepth()).isEqualTo(16);
        assertThat(found.white()).isEqualTo(65535);
        assertThat(found.hasAlpha()).isFalse();
    }

    @Test
    void colourPngWithAlphaKeepsItsColours() throws Exception {
        PictureImage found =
                read(PictureBytes.png(2, 1, 8, 6, new byte[][] {{10, 20, 30, 0, (byte) 200, 100, 50, (byte) 255}}));
        assertThat(pixels(found, 0)).containsExactly(10, 200);
        assertThat(pixels(found, 1)).containsExactly(20, 100);
        assertThat(pixels(found, 2)).containsExactly(30, 50);
        assertThat(found.hasAlpha()).isTrue();
        assertThat(found.bitDepth()).isEqualTo(8);
    }

    @Test
    void sixteenBitColourPngIsExact() throws Exception {
        PictureImage found = read(PictureBytes.png(1, 1, 16, 2, new byte[][] {{1, 0, 2, 0, 3, 1}}));
        assertThat(found.planes()).extracting(p -> p.at(0, 0)).containsExactly(256f, 512f, 769f);
    }

    @Test
    void oneBitGreyIsBlackAndWhite() throws Exception {
        PictureImage found = read(PictureBytes.png(4, 1, 1, 0, new byte[][] {{(byte) 0b1010_0000}}));
        assertThat(pixels(found, 0)).containsExactly(255, 0, 255, 0);
    }

    @Test
    void tiffOfShortsInManyStripsIsExact() throws Exception {
        int width = 3;
        int height = 50;
        ByteBuffer samples = ByteBuffer.allocate(width * height * 3 * 2).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < width * height * 3; i++) {
            samples.putShort((short) (i * 145));
        }
        PictureImage found = read(PictureBytes.tiff(width, height, 3, 16, 1, 0, 7, samples.array()));
        assertThat(found.planes()).hasSize(3);
        for (int i = 0; i < width * height; i++) {
            assertThat(found.planes().get(2).at(i % width, i / width)).isEqualTo((3 * i + 2) * 145 & 0xFFFF);
        }
    }

    @Test
    void tiffOfFloatsIsExactAndKnowsItsWhite() throws Exception {
        ByteBuffer samples = ByteBuffer.allocate(16).order(ByteOrder.LITTLE_ENDIAN);
        samples.putFloat(0).putFloat(0.25f).putFloat(-0.5f).putFloat(1);
        PictureImage found = read(PictureBytes.tiff(2, 2, 1, 32, 3, 0, 2, samples.array()));
        assertThat(pixels(found, 0)).containsExactly(0, 0.25f, -0.5f, 1);
        assertThat(found.white()).isEqualTo(1);
        assertThat(found.bitDepth()).isEqualTo(32);
        samples.putFloat(12, 40000);
        assertThat(read(PictureBytes.tiff(2, 2, 1, 32, 3, 0, 2, samples.array()))
                        .white())
                .isEqualTo(65535);
    }

    /** ExtraSamples 1: colour stored multiplied by its alpha. */
    @Test
    void premultipliedAlphaIsDividedOut() throws Exception {
        byte[] samples = {50, 25, 100, (byte) 128, 0, 0, 0, 0};
        PictureImage found = read(PictureBytes.tiff(2, 1, 4, 8, 1, 1, 1, samples));
        assertThat(found.hasAlpha()).isTrue();
        assertThat(pixels(found, 0)).containsExactly(100, 0);
        assertThat(pixels(found, 1)).containsExactly(50, 0);
        assertThat(pixels(found, 2)).containsExactly(199, 0);
    }

    @Test
    void jpegKeepsGreysAndColours() throws Exception {
        BufferedImage image = new BufferedImage(32, 32, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 1024; i++) {
            image.setRGB(i % 32, i / 32, 0xC86432);
        }
        Path file = folder.resolve("colour.jpg");
        ImageIO.write(image, "jpeg", file.toFile());
        PictureImage found = PictureFile.read(file);
        assertThat(found.planes()).extracting(p -> (double) p.at(16, 16)).satisfies(rgb -> {
            assertThat(rgb.get(0)).isCloseTo(200, within(3.0));
            assertThat(rgb.get(1)).isCloseTo(100, within(3.0));
            assertThat(rgb.get(2)).isCloseTo(50, within(3.0));
        });
    }

    @Test
    void cutOffFilesAreProblemsNotPictures() throws IOException {
        BufferedImage noise = new BufferedImage(64, 64, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < 4096; i++) {
            noise.getRaster().setSample(i % 64, i / 64, 0, i * 7919 % 256);
        }
        for (String format : new String[] {"png", "jpeg", "tiff"}) {
            Path file = folder.resolve("cut." + format);
            ImageIO.write(noise, format, file.toFile());
            byte[] whole = Files.readAllBytes(file);
            for (int part = 0; part < 16; part++) {
                Files.write(file, Arrays.copyOf(whole, whole.length * part / 16));
                assertThatThrownBy(() -> PictureFile.read(file))
                        .as("%s cut to %d/16", format, part)
                        .isInstanceOf(UnreadablePictureException.class);
            }
        }
    }

    @Test
    void absurdSizesAreRefusedBeforeAnythingIsAllocated() {
        byte[] huge = PictureBytes.png(1_000_000, 1_000_000, 8, 0, new byte[][] {{0}});
        assertThatThrownBy(() -> read(huge))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessageContaining("1000000 x 1000000");
    }

    @Test
    void otherFilesAreRefusedInWords() {
        assertThatThrownBy(() -> read("SIMPLE  =                    T".getBytes(StandardCharsets.US_ASCII)))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessageContaining("no PNG, JPEG or TIFF");
        assertThatThrownBy(() -> PictureFile.read(folder.resolve("absent.png")))
                .isInstanceOf(UnreadablePictureException.class);
        assertThatThrownBy(() -> PictureFile.read(folder)).isInstanceOf(UnreadablePictureException.class);
    }
}
