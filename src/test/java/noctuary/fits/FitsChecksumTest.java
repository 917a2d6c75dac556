package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The check sum of FITS 4.0 section 4.4.2.7 and appendix J. */
class FitsChecksumTest {
    private static long sum(byte[] bytes) {
        FitsChecksum checksum = new FitsChecksum();
        checksum.accept(ByteBuffer.wrap(bytes));
        return checksum.value();
    }

    /** The worked example of the HEASARC check sum document, nodes 14 and 17. */
    @Test
    void encodesThePublishedExample() {
        assertThat(FitsChecksum.encode(868229149L)).isEqualTo("hcHjjc9ghcEghc9g");
    }

    /** A sum of all ones has the complement 0: sixteen zeros. */
    @Test
    void encodesMinusZeroAsZeros() {
        assertThat(FitsChecksum.encode(0xFFFFFFFFL)).isEqualTo("0000000000000000");
    }

    /** 0x00010002 + 0xFFFF0000 carries around the end: 2 + 1. */
    @Test
    void carriesAroundTheEnd() {
        assertThat(sum(new byte[] {0, 1, 0, 2, (byte) 0xff, (byte) 0xff, 0, 0, 0, 0, 0, 0}))
                .isEqualTo(3);
    }

    @Test
    void countsALastIncompleteWordAsFilledWithZeros() {
        assertThat(sum(new byte[] {0, 0, 0, 1, 2})).isEqualTo(0x02000001L);
    }

    /** Computed with astropy 5.2.1, whose verify_checksum accepts the file. */
    @Test
    void agreesOnTheTinyFile() throws Exception {
        byte[] file = tiny("'HHeKJ9dHHEdHH9dH'", "'2147581957'").bytes();
        assertThat(sum(Arrays.copyOfRange(file, 2880, 5760))).isEqualTo(2147581957L);
        assertThat(sum(file)).isEqualTo(0xFFFFFFFFL);
        byte[] unsigned = tiny("'0000000000000000'", "'2147581957'").bytes();
        assertThat(FitsChecksum.encode(sum(unsigned))).isEqualTo("HHeKJ9dHHEdHH9dH");
        CRC32 crc = new CRC32();
        crc.update(file);
        assertThat(crc.getValue()).isEqualTo(1668280748L);
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(file);
        assertThat(HexFormat.of().formatHex(digest))
                .isEqualTo("db7bfc7c9aa60e33dd82ae81a8cb7390af73119a5a2e02756e4e3195da32a95c");
    }

    private static FitsBytes tiny(String checksum, String datasum) {
        return new FitsBytes()
                .primary(16, 4, 2)
                .card("BZERO", 32768)
                .card("BSCALE", 1)
                .card(String.format("%-8s= %-20s", "CHECKSUM", checksum))
                .card(String.format("%-8s= %-20s", "DATASUM", datasum))
                .end()
                .shorts(0x8000, 0x8001, 0x8002, 0x8003, 0, 1, 0x7ffe, 0x7fff);
    }

    @Test
    void doesNotDependOnHowTheBytesAreCut() {
        byte[] bytes = "The quick brown fox jumps over the lazy dog, 9 times.123".getBytes(StandardCharsets.US_ASCII);
        FitsChecksum pieces = new FitsChecksum();
        for (int i = 0; i < bytes.length; i += 8) {
            pieces.accept(ByteBuffer.wrap(bytes, i, 8));
        }
        assertThat(pieces.value()).isEqualTo(sum(bytes));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stars/m13.fits", "stars/m13_rice.fits", "extra/ngc1316_checksum.fits", "nasty/comp.fits"})
    void findsNoFaultWithSoundFiles(String name) throws Exception {
        FrameHeader header = FitsFile.read(RealFrames.file(name)).header();
        assertThat(header.oddities()).isEmpty();
    }

    @Test
    void noticesOneChangedPixel(@TempDir Path folder) throws Exception {
        byte[] file = tiny("'HHeKJ9dHHEdHH9dH'", "'2147581957'").bytes();
        file[2881]++;
        Path damaged = Files.write(folder.resolve("a.fits"), file);
        List<FrameHeader.Oddity> oddities = FitsFile.read(damaged).header().oddities();
        assertThat(oddities)
                .singleElement()
                .extracting(FrameHeader.Oddity::card)
                .isEqualTo("DATASUM");
    }

    @Test
    void forgivesAHeaderEditedLater(@TempDir Path folder) throws Exception {
        byte[] file = tiny("'HHeKJ9dHHEdHH9dH'", "'2147581957'").bytes();
        file[2879] = 'x';
        Path edited = Files.write(folder.resolve("a.fits"), file);
        assertThat(FitsFile.read(edited).header().oddities()).isEmpty();
    }

    @Test
    void checksTheWholeUnitWhereThereIsNoDataSum(@TempDir Path folder) throws Exception {
        FitsBytes file = new FitsBytes()
                .primary(16, 2, 2)
                .card("CHECKSUM= 'abcdefghijklmnop'")
                .end()
                .shorts(1, 2, 3, 4);
        FrameHeader header = FitsFile.read(file.write(folder.resolve("a.fits"))).header();
        assertThat(header.oddities())
                .singleElement()
                .extracting(FrameHeader.Oddity::card)
                .isEqualTo("CHECKSUM");
    }
}
