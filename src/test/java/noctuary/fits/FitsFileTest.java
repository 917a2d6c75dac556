package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stored pixels to planes, by FITS 4.0 sections 4.4.2.5 and 5, on files written byte by byte. */
class FitsFileTest {
    @TempDir
    Path folder;

    private FitsImage read(FitsBytes file) throws Exception {
        return FitsFile.read(file.write(folder.resolve("a.fits")));
    }

    private static float[] values(Plane plane) {
        float[] values = new float[plane.width() * plane.height()];
        for (int y = 0; y < plane.height(); y++) {
            plane.copyRow(0, y, plane.width(), values, y * plane.width());
        }
        return values;
    }

    private float[] only(FitsBytes file) throws Exception {
        FitsImage image = read(file);
        assertThat(image.planes()).hasSize(1);
        return values(image.planes().get(0));
    }

    @Test
    void reads8BitsAsUnsigned() throws Exception {
        assertThat(only(new FitsBytes().primary(8, 2, 2).end().data(new byte[] {0, 1, -1, 127})))
                .containsExactly(0, 1, 255, 127);
        assertThat(only(new FitsBytes()
                        .primary(8, 2, 2)
                        .card("BZERO", -128)
                        .end()
                        .data(new byte[] {0, 1, -1, 127})))
                .containsExactly(-128, -127, 127, -1);
    }

    @Test
    void readsSignedAndUnsigned16Bits() throws Exception {
        assertThat(only(new FitsBytes().primary(16, 3, 1).end().shorts(-32768, 0, 32767)))
                .containsExactly(-32768, 0, 32767);
        assertThat(only(new FitsBytes()
                        .primary(16, 3, 1)
                        .card("BZERO", "32768.")
                        .end()
                        .shorts(-32768, 0, 32767)))
                .containsExactly(0, 32768, 65535);
    }

    @Test
    void readsSignedAndUnsigned32Bits() throws Exception {
        byte[] data = ByteBuffer.allocate(8).putInt(Integer.MIN_VALUE).putInt(7).array();
        assertThat(only(new FitsBytes().primary(32, 2, 1).end().data(data))).containsExactly(-0x1p31f, 7);
        assertThat(only(new FitsBytes()
                        .primary(32, 2, 1)
                        .card("BZERO", 2147483648L)
                        .end()
                        .data(data)))
                .containsExactly(0, 2147483655f);
    }

    @Test
    void readsSignedAndUnsigned64Bits() throws Exception {
        byte[] data =
                ByteBuffer.allocate(16).putLong(Long.MIN_VALUE + 3).putLong(-1).array();
        assertThat(only(new FitsBytes().primary(64, 2, 1).end().data(data))).containsExactly(-0x1p63f, -1);
        assertThat(only(new FitsBytes()
                        .primary(64, 2, 1)
                        .card("BZERO", "9223372036854775808")
                        .end()
                        .data(data)))
                .containsExactly(3, 0x1p63f);
    }

    @Test
    void readsFloatsAndDoublesWithInfinitiesAsMissing() throws Exception {
        byte[] floats = ByteBuffer.allocate(16)
                .putFloat(1.5f)
                .putFloat(Float.NEGATIVE_INFINITY)
                .putInt(0x7f800001)
                .putFloat(-0f)
                .array();
        assertThat(only(new FitsBytes().primary(-32, 2, 2).end().data(floats)))
                .containsExactly(1.5f, Float.NaN, Float.NaN, 0f);
        byte[] doubles = ByteBuffer.allocate(16).putDouble(1e300).putDouble(0.1).array();
        assertThat(only(new FitsBytes().primary(-64, 2, 1).end().data(doubles))).containsExactly(Float.NaN, 0.1f);
    }

    /** The stored value is compared before scaling; astropy 5.2.1 gives the same four numbers. */
    @Test
    void appliesBlankBeforeScaling() throws Exception {
        FitsBytes file = new FitsBytes()
                .primary(16, 4, 1)
                .card("BSCALE", 0.5)
                .card("BZERO", 100.0)
                .card("BLANK", -32768)
                .end()
                .shorts(1, 2, -32768, 4);
        assertThat(only(file)).containsExactly(100.5f, 101f, Float.NaN, 102f);
    }

    @Test
    void readsColourPlanesFirstAndLast() throws Exception {
        FitsImage last = read(new FitsBytes().primary(16, 2, 1, 3).end().shorts(1, 2, 10, 20, 100, 200));
        FitsImage first = read(new FitsBytes()
                .primary(16, 3, 1, 5)
                .end()
                .shorts(1, 10, 100, 2, 20, 200, 3, 30, 300, 4, 40, 400, 5, 50, 500));
        assertThat(last.planes()).hasSize(3);
        assertThat(values(last.planes().get(2))).containsExactly(100, 200);
        assertThat(values(first.planes().get(1))).containsExactly(10, 20, 30, 40, 50);
        FitsImage floats = read(new FitsBytes()
                .primary(-32, 3, 1, 2)
                .end()
                .data(ByteBuffer.allocate(24)
                        .putFloat(1)
                        .putFloat(2)
                        .putFloat(3)
                        .putFloat(4)
                        .putFloat(5)
                        .putFloat(6)
                        .array()));
        assertThat(values(floats.planes().get(2))).containsExactly(3, 6);
    }

    @Test
    void readsASinglePlaneAsMonoAndOtherCubesByTheirFirst() throws Exception {
        assertThat(only(new FitsBytes().primary(16, 2, 1, 1, 1).end().shorts(7, 8)))
                .containsExactly(7, 8);
        FitsImage cube = read(new FitsBytes().primary(16, 2, 1, 2).end().shorts(7, 8, 9, 10));
        assertThat(values(cube.planes().get(0))).containsExactly(7, 8);
        assertThat(cube.header().oddities()).hasSize(1);
    }

    @Test
    void readsTheFirstImageWithPixelsAndInheritsWhatBelongsToIt() throws Exception {
        FitsImage image = read(inheriting("T"));
        assertThat(values(image.planes().get(0))).containsExactly(1, 2);
        assertThat(image.header().exposureSeconds().orElseThrow().value()).isEqualTo(12);
        assertThat(image.header().filter().orElseThrow().value()).isEqualTo("own");
        assertThat(image.header().sky()).isEmpty();
        assertThat(image.cards()).noneMatch(card -> card.keyword().equals("BZERO"));
        assertThat(read(inheriting("F")).header().exposureSeconds()).isEmpty();
    }

    private static FitsBytes inheriting(String inherit) {
        return new FitsBytes()
                .primary(16)
                .card("EXPTIME", 12.0)
                .card("FILTER  = 'primary'")
                .card("BZERO", 32768)
                .card("CTYPE1  = 'RA---TAN'")
                .end()
                .extension(16, 0, 5)
                .end()
                .extension(16, 2, 1)
                .card("INHERIT", inherit)
                .card("FILTER  = 'own'")
                .end()
                .shorts(1, 2);
    }

    @Test
    void readsGzipAndGivesTheSameDigest() throws Exception {
        FitsBytes file =
                new FitsBytes().primary(16, 2, 2).card("BZERO", 32768).end().shorts(1, 2, 3, 4);
        FitsImage plain = read(file);
        FitsImage packed = FitsFile.read(file.gzip(folder.resolve("a.fits.gz")));
        assertThat(packed.pixelDigest()).isEqualTo(plain.pixelDigest()).matches("[0-9a-f]{16}");
    }

    @Test
    void digestKnowsPixelsShapeAndScalingButNotTheHeader() throws Exception {
        String digest =
                read(new FitsBytes().primary(16, 2, 2).end().shorts(1, 2, 3, 4)).pixelDigest();
        assertThat(read(new FitsBytes().primary(16, 2, 2).card("GAIN", 5).end().shorts(1, 2, 3, 4))
                        .pixelDigest())
                .isEqualTo(digest);
        assertThat(read(new FitsBytes().primary(16, 2, 2).end().shorts(1, 2, 4, 3))
                        .pixelDigest())
                .isNotEqualTo(digest);
        assertThat(read(new FitsBytes().primary(16, 4, 1).end().shorts(1, 2, 3, 4))
                        .pixelDigest())
                .isNotEqualTo(digest);
        assertThat(read(new FitsBytes().primary(16, 2, 2).card("BZERO", 1).end().shorts(1, 2, 3, 4))
                        .pixelDigest())
                .isNotEqualTo(digest);
    }

    /** Large enough to be mapped, in several pieces. */
    @Test
    void readsALargeFileWhole() throws Exception {
        int[] ramp = new int[1000 * 1100];
        Arrays.setAll(ramp, i -> i % 60_000 - 30_000);
        Plane plane = read(new FitsBytes().primary(16, 1000, 1100).end().shorts(ramp))
                .planes()
                .get(0);
        for (int i = 0; i < ramp.length; i += 997) {
            assertThat(plane.at(i % 1000, i / 1000)).isEqualTo(ramp[i]);
        }
    }

    @Test
    void readsTheHeaderWithoutThePixels() throws Exception {
        Path file = new FitsBytes()
                .primary(16, 2, 2)
                .card("EXPTIME", 3.0)
                .end()
                .shorts(1, 2, 3, 4)
                .gzip(folder.resolve("a.gz"));
        assertThat(FitsFile.readHeader(file).exposureSeconds().orElseThrow().value())
                .isEqualTo(3);
    }

    @Test
    void stopsAtEndWhateverFollowsInTheBlock() throws Exception {
        FitsBytes file = new FitsBytes()
                .primary(16, 2, 1)
                .card("END")
                .card("EXPTIME", 5.0)
                .end()
                .shorts(1, 2);
        FitsImage image = read(file);
        assertThat(image.header().exposureSeconds()).isEmpty();
        assertThat(values(image.planes().get(0))).containsExactly(1, 2);
    }

    @Test
    void toleratesAMissingPaddingAndTellsIt() throws Exception {
        byte[] whole =
                new FitsBytes().primary(16, 2, 2).end().shorts(1, 2, 3, 4).bytes();
        Path cut = Files.write(folder.resolve("a.fits"), Arrays.copyOf(whole, 2888));
        assertThat(FitsFile.read(cut).header().oddities())
                .singleElement()
                .asString()
                .contains("2872 bytes");
    }

    @Test
    void saysWhatIsNotThere() {
        assertThatThrownBy(() -> FitsFile.read(folder.resolve("none.fits")))
                .isInstanceOf(UnreadableException.class)
                .hasMessage("is not there");
        assertThatThrownBy(() -> FitsFile.read(folder)).hasMessage("is a folder");
    }
}
