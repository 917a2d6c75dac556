package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures as other programs write them: ImageMagick's (see make_pictures.sh), and the JDK's with a profile. */
class WrittenPicturesTest {
    private static final ICC_Profile LINEAR = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB);

    @TempDir
    Path folder;

    private static Path file(String name) throws URISyntaxException {
        return Path.of(
                WrittenPicturesTest.class.getResource("/noctuary/image/" + name).toURI());
    }

    /** Sample {@code i} of the reference, a portable pixmap of 29 x 17 with 16 bits, most significant byte first. */
    private static int[] reference() throws IOException, URISyntaxException {
        byte[] bytes = Files.readAllBytes(file("reference.ppm"));
        ByteBuffer samples = ByteBuffer.wrap(bytes, bytes.length - 29 * 17 * 6, 29 * 17 * 6);
        int[] values = new int[29 * 17 * 3];
        Arrays.setAll(values, i -> samples.getShort() & 0xFFFF);
        return values;
    }

    private static void assertSame(PictureImage found, double scale, double tolerance) throws Exception {
        int[] reference = reference();
        assertThat(found.width()).isEqualTo(29);
        assertThat(found.height()).isEqualTo(17);
        assertThat(found.planes()).hasSize(3);
        for (int i = 0; i < reference.length; i++) {
            Plane plane = found.planes().get(i % 3);
            assertThat((double) plane.at(i / 3 % 29, i / 3 / 29))
                    .as("sample %d", i)
                    .isCloseTo(reference[i] * scale, within(tolerance));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rgb16-lzw.tif",
                "rgb16-zip-msb.tif",
                "rgb16-lzw-planar.tif",
                "rgb16-lzw-tiled.tif",
                "rgb16-packbits.tif",
                "rgba16-zip.tif",
                "rgb16.png",
                "rgb16-interlaced.png",
                "rgba16.png"
            })
    void sixteenBitsAreExact(String name) throws Exception {
        PictureImage found = PictureFile.read(file(name));
        assertThat(found.bitDepth()).isEqualTo(16);
        assertThat(found.hasAlpha()).isEqualTo(name.startsWith("rgba"));
        assertSame(found, 1, 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rgbf32.tif", "rgbf32-zip.tif", "rgbf32-zip-msb.tif", "rgbf32-lzw-planar.tif"})
    void floatsAreExact(String name) throws Exception {
        PictureImage found = PictureFile.read(file(name));
        assertThat(found.bitDepth()).isEqualTo(32);
        assertThat(found.white()).isEqualTo(1);
        assertSame(found, 1 / 65535.0, 1e-7);
    }

    /** Eleven significant bits: half of 2⁻¹¹ of a value below 1. */
    @ParameterizedTest
    @ValueSource(strings = {"rgbf16.tif", "rgbf16-zip.tif"})
    void halfFloatsKeepElevenBits(String name) throws Exception {
        PictureImage found = PictureFile.read(file(name));
        assertThat(found.white()).isEqualTo(1);
        assertSame(found, 1 / 65535.0, 0x1p-12);
    }

    @Test
    void eightBitsAreWithinOneStep() throws Exception {
        assertSame(PictureFile.read(file("rgb8-lzw.tif")), 1 / 257.0, 1);
        assertSame(PictureFile.read(file("rgb.jpg")), 1 / 257.0, 4);
    }

    /** IEEE 754-2008, binary16: 1, -2, 65504 (the largest), 2⁻²⁴ (the smallest above zero), infinity. */
    @ParameterizedTest
    @CsvSource({
        "0x3C00, 1",
        "0xC000, -2",
        "0x7BFF, 65504",
        "0x0001, 5.9604645E-8",
        "0x7C00, Infinity",
        "0x3555, 0.33325195"
    })
    void halfFloatsAreThoseOfTheStandard(String bits, float value) {
        assertThat(HalfFloat.of(Integer.decode(bits))).isEqualTo(value);
    }

    private static BufferedImage withProfile() {
        ColorSpace space = new ICC_ColorSpace(LINEAR);
        ComponentColorModel colours =
                new ComponentColorModel(space, false, false, Transparency.OPAQUE, DataBuffer.TYPE_USHORT);
        WritableRaster raster = colours.createCompatibleWritableRaster(8, 4);
        for (int i = 0; i < 96; i++) {
            raster.setSample(i / 3 % 8, i / 24, i % 3, i * 650);
        }
        return new BufferedImage(colours, raster, false, null);
    }

    /** Tag 34675 of the ICC specification holds a profile in TIFF. */
    @Test
    void aProfileInTiffLeavesTheStoredNumbersAlone() throws Exception {
        Path file = folder.resolve("profile.tif");
        assertThat(ImageIO.write(withProfile(), "tiff", file.toFile())).isTrue();
        assertThat(Files.size(file)).isGreaterThan(LINEAR.getData().length);
        PictureImage found = PictureFile.read(file);
        assertThat(found.planes().get(2).at(3, 2)).isEqualTo((2 * 24 + 3 * 3 + 2) * 650);
    }

    /** APP2 segment of a JPEG file, marked ICC_PROFILE, part 1 of 1 (ICC.1:2022, annex B.4). */
    @Test
    void aProfileInJpegLeavesTheStoredNumbersAlone() throws Exception {
        byte[] plain = Files.readAllBytes(file("rgb.jpg"));
        byte[] profile = LINEAR.getData();
        ByteArrayOutputStream with = new ByteArrayOutputStream();
        int app0 = 4 + ByteBuffer.wrap(plain).order(ByteOrder.BIG_ENDIAN).getShort(4);
        with.write(plain, 0, app0);
        ByteBuffer head = ByteBuffer.allocate(18).putShort((short) 0xFFE2).putShort((short) (profile.length + 16));
        head.put("ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII))
                .put((byte) 1)
                .put((byte) 1);
        with.writeBytes(head.array());
        with.writeBytes(profile);
        with.write(plain, app0, plain.length - app0);
        Path file = folder.resolve("profile.jpg");
        Files.write(file, with.toByteArray());
        PictureImage found = PictureFile.read(file);
        PictureImage without = PictureFile.read(file("rgb.jpg"));
        for (int p = 0; p < 3; p++) {
            for (int i = 0; i < 29 * 17; i++) {
                assertThat(found.planes().get(p).at(i % 29, i / 29))
                        .isEqualTo(without.planes().get(p).at(i % 29, i / 29));
            }
        }
    }

    @Test
    void cutOffDirectoriesAreProblemsNotPictures() throws Exception {
        byte[] whole = Files.readAllBytes(file("rgb16-lzw.tif"));
        for (int part = 0; part < 24; part++) {
            Path cut = folder.resolve("cut.tif");
            Files.write(cut, Arrays.copyOf(whole, whole.length * part / 24));
            assertThatThrownBy(() -> PictureFile.read(cut))
                    .as("cut to %d/24", part)
                    .isInstanceOf(UnreadablePictureException.class);
        }
    }
}
