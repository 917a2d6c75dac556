package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a file claims, reading ends soon, with an image or with a sentence. */
class HostileFilesTest {
    @TempDir
    Path folder;

    private void assertRefused(Path file, String message) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertThatThrownBy(() -> FitsFile.read(file))
                        .isInstanceOf(UnreadableException.class)
                        .hasMessageContaining(message));
    }

    @ParameterizedTest
    @CsvSource({
        "NAXIS1, 1000000000, is cut short",
        "NAXIS1, 9223372036854775807, is cut short",
        "NAXIS1, 99999999999999999999, whole number",
        "NAXIS1, 4.5, whole number",
        "NAXIS1, -1, negative",
        "NAXIS1, 0, no image",
        "NAXIS, 999, no NAXIS3",
        "NAXIS, 1000, 0 to 999",
        "NAXIS, -2, 0 to 999",
        "BITPIX, 17, BITPIX = 17",
        "BITPIX, 0, BITPIX = 0"
    })
    void refusesImpossibleStructure(String keyword, String value, String message) throws Exception {
        byte[] file = new FitsBytes().primary(16, 2, 2).end().shorts(1, 2, 3, 4).bytes();
        String text = new String(file, StandardCharsets.ISO_8859_1);
        int at = text.indexOf(String.format("%-8s=", keyword));
        String card = String.format("%-8s= %20s", keyword, value);
        byte[] changed = (text.substring(0, at) + String.format("%-80s", card) + text.substring(at + 80))
                .getBytes(StandardCharsets.ISO_8859_1);
        assertRefused(Files.write(folder.resolve("a.fits"), changed), message);
    }

    @Test
    void refusesAClaimThatGzipCannotHold() throws Exception {
        FitsBytes file = new FitsBytes().primary(16, 30000, 30000).end().shorts(1, 2, 3, 4);
        assertRefused(file.gzip(folder.resolve("a.fits.gz")), "more than a file of its length can hold");
    }

    @Test
    void refusesGzipCutShort() throws Exception {
        int[] noise = new Random(4).ints(40_000, 0, 65536).toArray();
        Path packed = new FitsBytes().primary(16, 200, 200).end().shorts(noise).gzip(folder.resolve("a.fits.gz"));
        byte[] bytes = Files.readAllBytes(packed);
        assertRefused(Files.write(packed, Arrays.copyOf(bytes, bytes.length / 2)), "damaged");
    }

    /** 200 MB of zeros behind an image in 200 kB of gzip: what lies after the image is never inflated. */
    @Test
    void ignoresABombAfterTheImage() throws Exception {
        Path file = folder.resolve("bomb.fits.gz");
        byte[] zeros = new byte[1 << 20];
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file), 1 << 16)) {
            out.write(new FitsBytes().primary(16, 2, 2).end().shorts(1, 2, 3, 4).bytes());
            for (int i = 0; i < 200; i++) {
                out.write(zeros);
            }
        }
        FitsImage image = assertTimeoutPreemptively(Duration.ofSeconds(10), () -> FitsFile.read(file));
        assertThat(image.planes().get(0).at(1, 1)).isEqualTo(4);
    }

    @Test
    void refusesAnEndlessHeader() throws Exception {
        FitsBytes file = new FitsBytes().primary(16, 2, 2);
        for (int i = 0; i < 40_000; i++) {
            file.card("HISTORY nothing of note");
        }
        assertRefused(file.end().shorts(1, 2, 3, 4).write(folder.resolve("a.fits")), "no END card");
    }

    @Test
    void refusesAnAbsurdCompressedClaim() throws Exception {
        FitsBytes file = new FitsBytes()
                .primary(8)
                .end()
                .card("XTENSION= 'BINTABLE'")
                .card("BITPIX", 8)
                .card("NAXIS", 2)
                .card("NAXIS1", 8)
                .card("NAXIS2", 1)
                .card("PCOUNT", 0)
                .card("GCOUNT", 1)
                .card("TFIELDS", 1)
                .card("TTYPE1  = 'COMPRESSED_DATA'")
                .card("TFORM1  = '1PB(0)'")
                .card("ZIMAGE", "T")
                .card("ZCMPTYPE= 'RICE_1'")
                .card("ZBITPIX", 16)
                .card("ZNAXIS", 2)
                .card("ZNAXIS1", 100000)
                .card("ZNAXIS2", 100000)
                .end()
                .data(new byte[8]);
        assertRefused(file.write(folder.resolve("a.fits")), "more than a file of its length can hold");
    }

    /** Found by mutation: a row's descriptor claims 1.4 GB, and the library would allocate them. */
    @Test
    void refusesATileThatClaimsMoreThanTheHeap() throws Exception {
        byte[] file = RealFrames.resource("quantised-no-dither.fits");
        file[5760] = 0x54;
        assertRefused(Files.write(folder.resolve("a.fits"), file), "its tiles are damaged");
    }

    /** 500 seeded mutations of a plain, a gzipped and a Rice file: an image or a reason, at once and in silence. */
    @ParameterizedTest
    @CsvSource({"plain.fits, 300", "packed.fits.gz, 100", "tiles.fits, 100"})
    void survivesMutations(String name, int times) throws Exception {
        byte[] sound = switch (name) {
            case "plain.fits" -> sample().bytes();
            case "packed.fits.gz" -> Files.readAllBytes(sample().gzip(folder.resolve("s.gz")));
            default -> RealFrames.resource("quantised-no-dither.fits");
        };
        Random random = new Random(20250315);
        List<String> unforeseen = new ArrayList<>();
        List<LogRecord> chatter = listen();
        for (int i = 0; i < times; i++) {
            byte[] mutant = sound.clone();
            int changes = 1 + random.nextInt(6);
            for (int c = 0; c < changes; c++) {
                int end = c % 2 == 0 ? Math.min(mutant.length, 3000) : mutant.length;
                mutant[random.nextInt(end)] = (byte) random.nextInt(256);
            }
            Path file = Files.write(folder.resolve(name), mutant);
            assertTimeoutPreemptively(Duration.ofSeconds(10), () -> {
                try {
                    FitsFile.read(file);
                    FitsFile.readHeader(file);
                } catch (UnreadableException e) {
                    if (e.getMessage().contains("nobody foresaw")) {
                        unforeseen.add(e.getMessage());
                    }
                }
            });
        }
        assertThat(unforeseen).isEmpty();
        assertThat(chatter).isEmpty();
    }

    private static List<LogRecord> listen() {
        List<LogRecord> records = Collections.synchronizedList(new ArrayList<>());
        Logger.getLogger("").addHandler(new Handler() {
            @Override
            public void publish(LogRecord record) {
                if (String.valueOf(record.getLoggerName()).startsWith("nom.")) {
                    records.add(record);
                }
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
        return records;
    }

    private static FitsBytes sample() {
        int[] pixels = new Random(7).ints(30 * 20, 0, 65536).toArray();
        return new FitsBytes()
                .primary(16, 30, 20)
                .card("BZERO", 32768)
                .card("EXPTIME", 12.0)
                .card("DATE-OBS= '2025-03-15T22:30:15.5'")
                .card("OBJECT  = 'A long name that goes on &'")
                .card("CONTINUE  'and on' / comment")
                .card("HIERARCH ESO DET DIT = 12.5")
                .card("CTYPE1  = 'RA---TAN'")
                .card("CTYPE2  = 'DEC--TAN'")
                .card("CRVAL1", 150.0)
                .card("CRVAL2", 20.0)
                .card("CDELT1", -0.0004)
                .card("CDELT2", 0.0004)
                .end()
                .shorts(pixels);
    }
}
