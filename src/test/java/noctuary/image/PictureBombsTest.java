package noctuary.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Small files that claim, or unpack to, more than any memory holds: refused or passed over before it is asked for. */
@Timeout(value = 20, unit = TimeUnit.SECONDS)
class PictureBombsTest {
    private static final long LITTLE = 64L << 20;

    @TempDir
    Path folder;

    /** What reading {@code bytes} says; fails when it took much memory to say it. */
    private String said(String name, byte[] bytes) throws Exception {
        Path file = Files.write(folder.resolve(name), bytes);
        long before = allocated();
        String[] said = {""};
        assertThatThrownBy(() -> PictureFile.read(file))
                .isInstanceOf(UnreadablePictureException.class)
                .satisfies(e -> said[0] = e.getMessage());
        assertThat(allocated() - before).as("bytes allocated").isLessThan(LITTLE);
        return said[0];
    }

    private static long allocated() {
        return ((com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean())
                .getCurrentThreadAllocatedBytes();
    }

    /** So many zeros, packed about a thousand to one. */
    private static byte[] packedZeros(long count) throws Exception {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed)) {
            byte[] zeros = new byte[1 << 20];
            for (long done = 0; done < count; done += zeros.length) {
                out.write(zeros);
            }
        }
        return packed.toByteArray();
    }

    private static byte[] spliced(byte[] png, String type, byte[] content) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(png, 0, 33);
        file.writeBytes(PictureBytes.chunk(type, content));
        file.write(png, 33, png.length - 33);
        return file.toByteArray();
    }

    @ParameterizedTest
    @ValueSource(strings = {"zTXt", "iCCP"})
    void packedTextAndProfilesAreNeverUnpacked(String type) throws Exception {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        content.writeBytes("name\0\0".getBytes(StandardCharsets.US_ASCII));
        content.writeBytes(packedZeros(400L << 20));
        byte[] plain = PictureBytes.png(2, 1, 8, 0, new byte[][] {{7, 9}});
        Path file = Files.write(folder.resolve("bomb.png"), spliced(plain, type, content.toByteArray()));
        long before = allocated();
        PictureImage found = PictureFile.read(file);
        assertThat(PlainPng.of(file)).isEqualTo(plain);
        assertThat(allocated() - before).isLessThan(LITTLE);
        assertThat(found.planes().get(0).at(1, 0)).isEqualTo(9);
    }

    @Test
    void aPngThatIsTooShortForItsClaimIsRefusedAtOnce() throws Exception {
        assertThat(said("a.png", PictureBytes.png(10_000, 10_000, 16, 2, new byte[][] {new byte[500]})))
                .contains("ends too early");
        assertThat(said("b.png", PictureBytes.png(2_000_000_000, 1, 16, 2, new byte[][] {{0}})))
                .contains("claims");
        assertThat(said("c.png", PictureBytes.png(-1, -1, 8, 0, new byte[][] {{0}})))
                .contains("claims");
    }

    /** Pixels beyond those that the picture claims are not unpacked either. */
    @Test
    void pixelsBeyondTheClaimAreLeftAlone() throws Exception {
        byte[] plain = PictureBytes.png(2, 1, 8, 0, new byte[][] {{7, 9}});
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(plain, 0, 33);
        file.writeBytes(PictureBytes.chunk("IDAT", packedZeros(400L << 20)));
        file.writeBytes(PictureBytes.chunk("IEND", new byte[0]));
        Path bomb = Files.write(folder.resolve("bomb.png"), file.toByteArray());
        long before = allocated();
        assertThat(PictureFile.read(bomb).width()).isEqualTo(2);
        assertThat(allocated() - before).isLessThan(LITTLE);
    }

    @Test
    void aJpegThatIsTooShortForItsClaimIsRefusedAtOnce() throws Exception {
        byte[] jpeg = Files.readAllBytes(
                Path.of(getClass().getResource("/noctuary/image/rgb.jpg").toURI()));
        int frame = 2;
        while ((jpeg[frame + 1] & 0xF0) != 0xC0 || jpeg[frame + 1] == (byte) 0xC4) {
            frame += 2 + ((jpeg[frame + 2] & 255) << 8 | jpeg[frame + 3] & 255);
        }
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 10_000).putShort(frame + 7, (short) 10_000);
        assertThat(said("a.jpg", jpeg)).contains("ends too early");
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) -1).putShort(frame + 7, (short) -1);
        assertThat(said("b.jpg", jpeg)).contains("65535 x 65535");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 8, 32773})
    void aTiffThatIsTooShortForItsClaimIsRefusedAtOnce(int compression) throws Exception {
        byte[] tiff = PictureBytes.tiff(3, 2, 3, 16, 1, 0, 2, new byte[36]);
        byte[] packed = PictureKindsTest.patched(tiff, 259, compression);
        byte[] wide = PictureKindsTest.patched(packed, 256, 10_000);
        byte[] huge = PictureKindsTest.patched(PictureKindsTest.patched(wide, 257, 10_000), 278, 10_000);
        assertThat(said("a.tif", huge)).contains("ends too early");
        assertThat(said("b.tif", PictureKindsTest.patched(huge, 277, 60_000))).contains("claims 60000 samples");
        assertThat(said("c.tif", PictureKindsTest.patched(huge, 278, 0))).contains("pieces claim");
    }

    /** A directory that follows on itself, marked as a smaller copy, and one that claims to have any number of entries. */
    @Test
    void directoriesThatLeadNowhereEnd() throws Exception {
        ByteBuffer file = ByteBuffer.allocate(64).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0x4949).putShort((short) 42).putInt(8);
        file.putShort((short) 1)
                .putShort((short) 254)
                .putShort((short) 4)
                .putInt(1)
                .putInt(1);
        file.putInt(8);
        assertThat(said("loop.tif", file.array())).isNotEmpty();
        ByteBuffer big = ByteBuffer.allocate(64).order(ByteOrder.LITTLE_ENDIAN);
        big.putShort((short) 0x4949).putShort((short) 43).putInt(8).putLong(16).putLong(Long.MAX_VALUE / 20);
        assertThat(said("many.tif", big.array())).contains("ends too early");
        big.putLong(8, -3);
        assertThat(said("before.tif", big.array())).contains("ends too early");
    }

    @Test
    void tooLittleMemoryIsSaidInNumbers() {
        assertThatThrownBy(() -> PictureStore.requireRoom(Long.MAX_VALUE / 2))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessageContaining("MB of memory");
    }

    /** Every code of TIFF's LZW that is not in its table yet, and tables that are never cleared. */
    @Test
    void lzwWithoutSenseEnds() throws Exception {
        for (int seed = 0; seed < 200; seed++) {
            byte[] noise = new byte[20_000];
            new java.util.Random(seed).nextBytes(noise);
            try (LzwStream in = new LzwStream(new java.io.ByteArrayInputStream(noise))) {
                in.skipNBytes(Long.MAX_VALUE);
            } catch (java.io.IOException expected) {
                assertThat(Arrays.asList("its compressed data make no sense", null))
                        .contains(expected.getMessage());
            }
        }
    }
}
