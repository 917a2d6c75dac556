package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import noctuary.image.Plane;
import nom.tam.fits.Fits;
import nom.tam.fits.ImageHDU;
import nom.tam.image.compression.hdu.CompressedImageHDU;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tile compression of FITS 4.0 section 10: quantised floats against astropy, integers against the plain file. */
class TileCompressionTest {
    @TempDir
    Path folder;

    static Stream<String[]> quantised() {
        return RealFrames.table("quantised-astropy.tsv").stream();
    }

    @ParameterizedTest
    @MethodSource("quantised")
    void readsFloatsLikeAstropy(String name, String mean, String first, String inside, String last) throws Exception {
        Path file = Files.write(folder.resolve(name), RealFrames.resource(name));
        Plane plane = FitsFile.read(file).planes().get(0);
        close(PixelSummary.of(plane).mean(), mean);
        close(plane.at(0, 0), first);
        close(plane.at(4, 3), inside);
        close(plane.at(23, 19), last);
    }

    private static void close(double value, String expected) {
        double number = Double.parseDouble(expected);
        assertThat(value).isCloseTo(number, within(Math.abs(number) * 2e-7));
    }

    @ParameterizedTest
    @ValueSource(strings = {"RICE_1", "GZIP_1", "GZIP_2"})
    void keepsIntegersBitForBit(String algorithm) throws Exception {
        int[] noise = new Random(11).ints(64 * 48, 0, 4000).toArray();
        FitsImage plain = FitsFile.read(new FitsBytes()
                .primary(16, 64, 48)
                .card("BZERO", 32768)
                .card("BSCALE", 1)
                .end()
                .shorts(noise)
                .write(folder.resolve("a.fits")));
        FitsImage packed = FitsFile.read(compress(algorithm, folder.resolve("a.fits")));
        assertThat(packed.pixelDigest()).isEqualTo(plain.pixelDigest());
        assertThat(packed.bitpix()).isEqualTo(16);
        assertThat(packed.planes().get(0).at(63, 47))
                .isEqualTo(plain.planes().get(0).at(63, 47));
        assertThat(packed.cards()).noneMatch(card -> card.keyword().startsWith("ZTILE"));
    }

    private Path compress(String algorithm, Path plain) throws Exception {
        Path packed = folder.resolve("packed.fits.fz");
        try (Fits from = new Fits(plain.toFile());
                Fits to = new Fits()) {
            CompressedImageHDU image = CompressedImageHDU.fromImageHDU((ImageHDU) from.getHDU(0), 64, 1);
            image.setCompressAlgorithm(algorithm);
            if (algorithm.equals("RICE_1")) {
                image.getCompressOption(nom.tam.fits.compression.algorithm.rice.RiceCompressOption.class)
                        .setBlockSize(32);
            }
            image.compress();
            to.addHDU(image);
            to.write(packed.toFile());
        }
        return packed;
    }

    @Test
    void readsThreePlanesFromTiles() throws Exception {
        Path real = RealFrames.file("derived/d09_cube3.fits");
        FitsImage plain = FitsFile.read(real);
        Path packed = folder.resolve("cube.fits.fz");
        try (Fits from = new Fits(real.toFile());
                Fits to = new Fits()) {
            CompressedImageHDU image = CompressedImageHDU.fromImageHDU((ImageHDU) from.getHDU(0), 300, 10);
            image.setCompressAlgorithm("GZIP_1");
            image.compress();
            to.addHDU(image);
            to.write(packed.toFile());
        }
        FitsImage tiled = FitsFile.read(packed);
        assertThat(tiled.planes()).hasSize(3);
        assertThat(tiled.pixelDigest()).isEqualTo(plain.pixelDigest());
    }
}
