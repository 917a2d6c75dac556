package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import noctuary.image.Plane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Pixels of real files against astropy's; the resource says how its numbers were made. */
class PixelValuesTest {
    private static final double FLOAT = 2e-7;

    static Stream<Arguments> rows() {
        return RealFrames.table("pixels-astropy.tsv").stream().map(row -> Arguments.of(row[0], row));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void agreesWithAstropy(String name, String[] row) throws Exception {
        Plane plane = FitsFile.read(RealFrames.file(name)).planes().get(0);
        PixelSummary summary = PixelSummary.of(plane);
        close(summary.mean(), row[1]);
        close(summary.median(), row[2]);
        close(summary.lowest(), row[3]);
        close(summary.highest(), row[4]);
        close(plane.at(plane.width() - 1, 0), row[5]);
    }

    private static void close(double value, String expected) {
        double number = Double.parseDouble(expected);
        assertThat(value).isCloseTo(number, within(Math.max(1e-12, Math.abs(number) * FLOAT)));
    }

    /** Published with the file, in astropy's tests: rounds to 0, 1, 2 … 143 with FITS pixel (2, 2) missing. */
    @Test
    void keepsTheMissingPixelOfQuantisedDoubles() throws Exception {
        Plane plane = FitsFile.read(RealFrames.file("nasty/compressed_with_nan.fits"))
                .planes()
                .get(0);
        for (int y = 0; y < 12; y++) {
            for (int x = 0; x < 12; x++) {
                Float expected = x == 1 && y == 1 ? Float.NaN : 12f * y + x;
                assertThat(Float.valueOf((float) Math.rint(plane.at(x, y)))).isEqualTo(expected);
            }
        }
    }
}
