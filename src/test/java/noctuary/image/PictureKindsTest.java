package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Kinds of files that other programs write, by make_pictures.sh and make_pictures.py beside them. */
class PictureKindsTest {
    private static final int WIDTH = 29;
    private static final int HEIGHT = 17;

    @TempDir
    Path folder;

    private static Path file(String name) {
        try {
            return Path.of(PictureKindsTest.class
                    .getResource("/noctuary/image/" + name)
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** Sample {@code colour} of pixel (x, y) of the reference, 0 to 65535. */
    private static int reference(int x, int y, int colour) throws IOException {
        byte[] bytes = Files.readAllBytes(file("reference.ppm"));
        int at = bytes.length - WIDTH * HEIGHT * 6 + ((y * WIDTH + x) * 3 + colour) * 2;
        return ByteBuffer.wrap(bytes).getShort(at) & 0xFFFF;
    }

    private interface Expected {
        double at(int x, int y, int plane) throws IOException;
    }

    private static void assertPixels(PictureImage found, Expected expected, double tolerance) throws IOException {
        for (int p = 0; p < found.planes().size(); p++) {
            for (int y = 0; y < found.height(); y++) {
                for (int x = 0; x < found.width(); x++) {
                    assertThat((double) found.planes().get(p).at(x, y))
                            .as("plane %d at %d, %d", p, x, y)
                            .isCloseTo(expected.at(x, y, p), within(tolerance));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "big.tif, 16, 1, 0",
        "big-tiled-msb.tif, 16, 1, 0",
        "rgb16-lzw-lsb.tif, 16, 1, 0",
        "rgbf32-zip-tiled.tif, 32, 1.52590219e-5, 1e-7",
        "rgbf64-zip.tif, 32, 1.52590219e-5, 1e-7",
        "rgbf16-zip-differences.tif, 32, 1.52590219e-5, 2.5e-4",
        "rgb8-jpeg.tif, 8, 0.00389105, 4"
    })
    void everyKindGivesTheReference(String name, int bits, double scale, double tolerance) throws Exception {
        PictureImage found = PictureFile.read(file(name));
        assertThat(found.planes()).hasSize(3);
        assertThat(found.bitDepth()).isEqualTo(bits);
        assertThat(found.conversion()).isEmpty();
        assertPixels(found, (x, y, p) -> reference(x, y, p) * scale, tolerance);
    }

    @Test
    void wholeNumbersOf32BitsKnowTheirWhite() throws Exception {
        PictureImage found = PictureFile.read(file("longs.tif"));
        assertThat(found.white()).isEqualTo(4294967295f);
        assertPixels(found, (x, y, p) -> (float) (reference(x, y, p) * 65537L), 0);
    }

    @Test
    void greyKeepsItsAlphaApart() throws Exception {
        PictureImage found = PictureFile.read(file("grey16-alpha.tif"));
        assertThat(found.planes()).hasSize(1);
        assertThat(found.hasAlpha()).isTrue();
        assertPixels(found, (x, y, p) -> reference(x, y, 1), 0);
    }

    /** TIFF 6.0, section 3: WhiteIsZero. */
    @Test
    void whiteStoredAsZeroIsTurnedOver() throws Exception {
        assertPixels(PictureFile.read(file("white-is-zero.tif")), (x, y, p) -> reference(x, y, 1), 0);
    }

    /** Exif 2.3, 4.6.4: 6 means that row 0 is the right side and column 0 the top. */
    @ParameterizedTest
    @ValueSource(strings = {"turned-6.tif", "turned-6.png", "turned-6.jpg"})
    void picturesStandUpright(String name) throws Exception {
        PictureImage found = PictureFile.read(file(name));
        assertThat(found.width()).isEqualTo(HEIGHT);
        assertThat(found.height()).isEqualTo(WIDTH);
        assertThat(PictureFile.orientation(file(name))).isEqualTo(6);
        assertPixels(found, (x, y, p) -> reference(y, HEIGHT - 1 - x, p) >> 8, name.endsWith("jpg") ? 4 : 0);
    }

    /**
     * The table of Exif 2.3, 4.6.4: which sides of the upright picture row 0 and column 0 are. A picture of 3 x 2; the
     * places where its first pixel, the next of its row and the next of its column stand.
     */
    @ParameterizedTest
    @CsvSource({
        "1, top, left",
        "2, top, right",
        "3, bottom, right",
        "4, bottom, left",
        "5, left, top",
        "6, right, top",
        "7, right, bottom",
        "8, left, bottom"
    })
    void firstRowAndColumnLieAtTheirSides(int orientation, String row, String column) {
        Upright upright = Upright.of(orientation, 3, 2);
        for (int i = 0; i < 3; i++) {
            assertThat(lies(upright.index(i, 0), upright, row)).as("row").isTrue();
        }
        for (int i = 0; i < 2; i++) {
            assertThat(lies(upright.index(0, i), upright, column)).as("column").isTrue();
        }
        assertThat(upright.width() * upright.height()).isEqualTo(6);
    }

    private static boolean lies(int index, Upright upright, String side) {
        int x = index % upright.width();
        int y = index / upright.width();
        return switch (side) {
            case "top" -> y == 0;
            case "bottom" -> y == upright.height() - 1;
            case "left" -> x == 0;
            default -> x == upright.width() - 1;
        };
    }

    /** ImageMagick made the inks by the plain rule, so that this leads back. */
    @Test
    void inksOfTiffBecomeColours() throws Exception {
        PictureImage found = PictureFile.read(file("cmyk16-zip.tif"));
        assertThat(found.conversion().orElseThrow()).contains("plain rule");
        assertPixels(found, (x, y, p) -> reference(x, y, p), 1);
    }

    @Test
    void inksOfJpegBecomeColours() throws Exception {
        PictureImage found = PictureFile.read(file("cmyk.jpg"));
        assertThat(found.conversion().orElseThrow()).contains("plain rule");
        assertPixels(found, (x, y, p) -> light(ink(x, y, p), ink(x, y, 3)), 4);
    }

    /** As make_pictures.py paints it. */
    private static int ink(int x, int y, int ink) {
        return (37 * (x / 8) + 91 * (y / 8) + 53 * ink) % 256;
    }

    private static double light(double ink, double black) {
        return (255 - ink) * (255 - black) / 255;
    }

    /** Inks stored as brightness and differences, as python3-pil 9.4.0 reads them. */
    @Test
    void inksStoredAsBrightnessBecomeColours() throws Exception {
        List<double[]> read = Files.readAllLines(file("ycck.txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> Arrays.stream(line.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
        assertPixels(
                PictureFile.read(file("ycck.jpg")),
                (x, y, p) -> light(read.get(y / 8 * 3 + x / 8)[p], read.get(y / 8 * 3 + x / 8)[3]),
                2);
    }

    /**
     * A profile put together from ICC.1:2022 (7.2, 10.10): its table knows paper, black and the sixteen mixtures only.
     * CIE L* of 50 without colour is 118.9 of 255 in sRGB.
     */
    @Test
    void aProfileDecidesWhatInksLookLike() {
        Inks inks = Inks.of(InkProfile.greys(), 8);
        assertThat(inks.sentence()).contains("by the colour profile");
        int[] row = {0, 0, 0, 0, 255, 255, 255, 255, 255, 0, 0, 0};
        inks.toRgb(row, 4, 3);
        assertThat(row[0]).isBetween(254, 255);
        assertThat(row[4]).isBetween(0, 1);
        assertThat(row[8]).isBetween(117, 121);
        assertThat(row[9]).isBetween(117, 121);
        assertThat(row[10]).isBetween(117, 121);
    }

    @Test
    void aDamagedProfileCountsAsNone() {
        assertThat(Inks.of(new byte[200], 8).sentence()).contains("plain rule");
        assertThat(Inks.of(Arrays.copyOf(InkProfile.greys(), 700), 8).sentence())
                .contains("plain rule");
    }

    @ParameterizedTest
    @CsvSource({
        "turned-6.tif, 258, 12, 12 bits a sample",
        "turned-6.tif, 259, 50000, Zstandard",
        "turned-6.tif, 259, 4, a method for fax",
        "turned-6.tif, 262, 8, neither grey nor RGB",
        "rgbf32-zip.tif, 339, 2, signed numbers",
        "rgbf32-zip.tif, 317, 7, in a way that cannot be read"
    })
    void whatIsNotReadIsSaid(String name, int tag, int value, String said) throws Exception {
        byte[] whole = Files.readAllBytes(file(name));
        Path odd = Files.write(folder.resolve("odd.tif"), patched(whole, tag, value));
        assertThatThrownBy(() -> PictureFile.read(odd))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessageContaining(said);
    }

    /** Little-endian, first directory; a list of three gets three times the value. */
    static byte[] patched(byte[] tiff, int tag, int value) {
        ByteBuffer bytes = ByteBuffer.wrap(tiff.clone()).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        int directory = bytes.getInt(4);
        for (int i = 0; i < bytes.getShort(directory); i++) {
            int entry = directory + 2 + 12 * i;
            if ((bytes.getShort(entry) & 0xFFFF) == tag) {
                int count = bytes.getInt(entry + 4);
                boolean isShort = bytes.getShort(entry + 2) == 3;
                for (int n = 0; isShort && n < count; n++) {
                    bytes.putShort((count > 2 ? bytes.getInt(entry + 8) : entry + 8) + 2 * n, (short) value);
                }
                if (!isShort) {
                    bytes.putInt(entry + 8, value);
                }
                return bytes.array();
            }
        }
        throw new IllegalArgumentException("no tag " + tag);
    }

    @Test
    void memoryIsToldWithoutDecoding() throws Exception {
        Path text = Files.write(folder.resolve("a.png"), "no picture".getBytes(StandardCharsets.US_ASCII));
        assertThat(PictureFile.memory(text)).isZero();
        assertThat(PictureFile.orientation(text)).isEqualTo(1);
        assertThat(PictureFile.memory(file("rgb16.png"))).isEqualTo(WIDTH * HEIGHT * 6L);
        assertThat(PictureFile.memory(file("rgb.jpg"))).isEqualTo(WIDTH * HEIGHT * 3L);
        assertThat(PictureFile.memory(file("rgbf64-zip.tif"))).isEqualTo(WIDTH * HEIGHT * 12L);
    }
}
