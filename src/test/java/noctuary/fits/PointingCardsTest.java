package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import noctuary.image.Mosaic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coordinates as text and as numbers, and colour patterns. */
class PointingCardsTest {
    /** The sign survives a zero in front; worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "-00:30:15, -0.5041666667",
        "05 35 17.3, 5.5881388889",
        "-05 23 28, -5.3911111111",
        "+45d30m, 45.5",
        "5h35m17.3s, 5.5881388889",
        "' 9:27:27.00', 9.4575",
        "12.5, 12.5",
        "-3.018E+01, -30.18",
        "12:60:00, NaN",
        "north, NaN",
        "1:2:3:4, NaN",
        "'', NaN"
    })
    void readsAngles(String text, Double value) {
        assertThat(Double.valueOf(Angle.parse(text)))
                .satisfies(angle -> assertThat(value.isNaN() ? angle.isNaN() : Math.abs(angle - value) < 1e-9)
                        .isTrue());
    }

    private static FrameHeader.Centre centre(String... cards) {
        return FitsBytes.header(cards).centre().orElseThrow().value();
    }

    @Test
    void readsTextAsHoursAndNumbersAsDegrees() {
        assertThat(centre("RA      = '05:35:17.3'", "DEC     = '-05:23:28'").raDeg())
                .isCloseTo(83.8220833333, within(1e-9));
        assertThat(centre("RA      = 83.82", "DEC     = -5.39").raDeg()).isEqualTo(83.82);
        assertThat(centre("OBJCTRA = '05 35 17.3'", "OBJCTDEC= '-00 30 15'").decDeg())
                .isCloseTo(-0.5041666667, within(1e-9));
    }

    @Test
    void letsAnotherCardDecideASmallNumber() {
        assertThat(centre("RA      = '5.588'", "DEC     = '-5.39'", "OBJCTRA = '05 35 17'")
                        .raDeg())
                .isCloseTo(83.82, within(1e-9));
        assertThat(centre("RA      = 5.648", "DEC     = -30.18").raDeg()).isEqualTo(5.648);
        assertThat(centre("RA      = 5.588 / [hours]", "DEC     = -5.39").raDeg())
                .isCloseTo(83.82, within(1e-9));
    }

    @Test
    void leavesOutWhatIsNoPlace() {
        FrameHeader header = FitsBytes.header("RA      = '99:00:00'", "DEC     = '+95:00:00'");
        assertThat(header.centre()).isEmpty();
        assertThat(header.oddities()).hasSize(1);
        assertThat(FitsBytes.header("RA      = '05:35:17'").centre()).isEmpty();
    }

    /**
     * Turning an even number of rows over makes RGGB into GBRG; an odd column offset makes it GRBG; by construction.
     */
    @ParameterizedTest
    @CsvSource({
        "RGGB, 0, 0, , 80, RGGB",
        "rggb, 1, 0, , 80, GRBG",
        "RGGB, 0, 1, , 80, GBRG",
        "RGGB, 1, 1, , 80, BGGR",
        "RGGB, 0, 0, TOP-DOWN, 80, RGGB",
        "RGGB, 0, 0, BOTTOM-UP, 80, GBRG",
        "BGGR, 0, 0, BOTTOM-UP, 80, GRBG",
        "RGGB, 0, 0, BOTTOM-UP, 81, RGGB",
        "RGGB, 0, 1, BOTTOM-UP, 80, RGGB"
    })
    void namesThePatternFromTheFirstStoredPixel(
            String pattern, int x, int y, String order, int height, Mosaic expected) {
        CardIndex cards = new CardIndex(CardReader.read(Stream.of(
                                "BAYERPAT= '" + pattern + "'",
                                "XBAYROFF= " + x,
                                "YBAYROFF= " + y,
                                "ROWORDER= '" + (order == null ? "" : order) + "'")
                        .map(card -> String.format("%-80s", card))
                        .toList())
                .cards());
        assertThat(MosaicCards.mosaic(cards, height).orElseThrow().value()).isEqualTo(expected);
    }

    @Test
    void doesNotGuessAPattern() {
        FrameHeader header = FitsBytes.header("BAYERPAT= 'TRUE'");
        assertThat(header.mosaic()).isEmpty();
        assertThat(header.oddities()).hasSize(1);
    }
}
