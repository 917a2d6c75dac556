package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small files that would take their reader's time: each ends within seconds, and nothing goes on working behind it. */
class FileBombsTest {
    private static final Duration LIMIT = Duration.ofSeconds(10);
    private static final int CARDS_A_HEADER = 35_000;

    @TempDir
    Path folder;

    private static void inTime(Executable reading) {
        assertTimeoutPreemptively(LIMIT, reading);
    }

    /** 1,400,000 cards in 40 units before the image, in 7 MB of gzip. */
    @Test
    void aMillionCardsAreTooMany() throws Exception {
        Path file = folder.resolve("cards.fits.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file), 1 << 16)) {
            out.write(cards(new FitsBytes().primary(8)).end().bytes());
            byte[] extension = cards(new FitsBytes().extension(8)).end().bytes();
            for (int i = 1; i < 40; i++) {
                out.write(extension);
            }
        }
        assertThat(Files.size(file)).isLessThan(1 << 23);
        inTime(() -> assertThatThrownBy(() -> FitsFile.read(file))
                .isInstanceOf(UnreadableException.class)
                .hasMessageContaining("more cards than are read"));
    }

    private static FitsBytes cards(FitsBytes file) {
        for (int i = 0; i < CARDS_A_HEADER; i++) {
            file.card("KEY" + i, i);
        }
        return file;
    }

    /** One string over 35,000 cards: each lengthening copied all before, some 80 GB in all. */
    @Test
    void aStringWithoutEndIsCut() throws Exception {
        FitsBytes file = new FitsBytes().primary(16, 2, 2).card("OBJECT  = '" + "a".repeat(66) + "&'");
        for (int i = 0; i < CARDS_A_HEADER; i++) {
            file.card("CONTINUE  '" + "/b".repeat(33) + "&'");
        }
        Path written = file.end().shorts(1, 2, 3, 4).write(folder.resolve("a.fits"));
        inTime(() -> {
            FitsImage image = FitsFile.read(written);
            assertThat(image.header().object().orElseThrow().value()).hasSizeLessThan(5_000);
            assertThat(image.header().oddities()).anyMatch(o -> o.what().contains("continued over too many cards"));
        });
    }

    /** A path of some 2,000 folders: the pattern that takes folders off names once took a stack frame for each. */
    @Test
    void aNameOfManyFoldersIsItsLastPiece() throws Exception {
        FitsBytes file = new FitsBytes().primary(16, 2, 2).card("OBJECT  = '/" + "a/".repeat(32) + "&'");
        for (int i = 0; i < 57; i++) {
            file.card("CONTINUE  '" + "a/".repeat(33) + "&'");
        }
        file.card("CONTINUE  'M 27'");
        Path written = file.end().shorts(1, 2, 3, 4).write(folder.resolve("a.fits"));
        inTime(() -> assertThat(
                        FitsFile.read(written).header().object().orElseThrow().value())
                .isEqualTo("M 27"));
    }

    /** What a hierarchical tile says of its own size; the library went through so many pixels, or so many of none. */
    @ParameterizedTest
    @CsvSource({"2147483647, 0", "0, 2147483647", "65536, 65536", "2147483647, 2147483647", "-1, -1", "1, 100000"})
    void aTileThatClaimsAnotherSizeIsDamaged(int width, int height) throws Exception {
        byte[] file = RealFrames.resource("quantised-hcompress.fits");
        ByteBuffer bytes = ByteBuffer.wrap(file);
        int tiles = 0;
        for (int i = 0; i < file.length - 10; i++) {
            if (bytes.getShort(i) == (short) 0xDD99) {
                bytes.putInt(i + 2, width).putInt(i + 6, height);
                tiles++;
            }
        }
        assertThat(tiles).isPositive();
        Path written = Files.write(folder.resolve("a.fits"), file);
        inTime(() -> assertThatThrownBy(() -> FitsFile.read(written))
                .isInstanceOf(UnreadableException.class)
                .hasMessageContaining("its tiles are damaged"));
        assertThat(Thread.getAllStackTraces().values())
                .noneMatch(stack -> stack.length > 0
                        && stack[0].getClassName().startsWith("nom.tam")
                        && stack[stack.length - 1].getClassName().startsWith("java.lang.Thread"));
    }
}
