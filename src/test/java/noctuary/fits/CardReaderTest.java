package noctuary.fits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keyword rules of FITS 4.0 sections 4.1, 4.2 and the HIERARCH convention; damaged cards cost themselves only. */
class CardReaderTest {
    private static CardReader read(String... cards) {
        List<String> records = new ArrayList<>();
        for (String card : cards) {
            records.add(String.format(Locale.ROOT, "%-80.80s", card));
        }
        return CardReader.read(records);
    }

    private static Card only(String... cards) {
        CardReader reader = read(cards);
        assertThat(reader.cards()).hasSize(1);
        return reader.cards().get(0);
    }

    /** Section 4.2.1: two quotes stand for one, leading blanks count, trailing ones do not, a slash inside is text. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "'it''s'|\"it's\"",
                "'  two before and after  '|\"  two before and after\"",
                "'a / b' / real comment|a / b",
                "''|\"\"",
                "'don''t stop''' /x|\"don't stop'\""
            })
    void readsStrings(String field, String value) {
        assertThat(only("KEYWORD = " + field).value()).isEqualTo(value);
    }

    /** Section 4.2.1: only 20 to 7E hexadecimal are text; a NUL pads, an escape would steer a terminal. */
    @Test
    void controlCharactersBecomeBlanks() {
        assertThat(only("OBJECT  = 'M 27\0\0'").value()).isEqualTo("M 27");
        assertThat(only("OBJECT  = 'a\u001b[31mb\u009bc&'", "CONTINUE  '\u0007d' / e\u0001f"))
                .isEqualTo(new Card("OBJECT", "a [31mb c d", "e f", true));
    }

    @Test
    void separatesValueAndComment() {
        assertThat(only("EXPTIME =                 12.0 / [s] of one frame"))
                .isEqualTo(new Card("EXPTIME", "12.0", "[s] of one frame", false));
        assertThat(only("FILTER  = 'Ha      '           / narrow")).isEqualTo(new Card("FILTER", "Ha", "narrow", true));
    }

    /** Section 4.1.2.3: a blank value is undefined, which is neither 0 nor a text. */
    @Test
    void keepsABlankValueBlank() {
        assertThat(only("GAIN    =                      / unknown").isBlank()).isTrue();
    }

    /** Section 4.2.1.2: a piece that ends in an ampersand goes on in CONTINUE; an ampersand at the very end is text. */
    @Test
    void joinsContinuedStrings() {
        assertThat(only("OBJECT  = 'one &'", "CONTINUE  'two &' / first", "CONTINUE  'three' / second"))
                .isEqualTo(new Card("OBJECT", "one two three", "first second", true));
        assertThat(only("OBJECT  = 'Smith &'").value()).isEqualTo("Smith &");
        assertThat(only("OBJECT  = 'whole'", "CONTINUE  'stray'").value()).isEqualTo("whole");
    }

    /** A string of 60 A, 40 B and it's, laid out by astropy 5.2.1, comes back with its 104 characters. */
    @Test
    void readsALongStringAsAstropyWritesIt() {
        String text = "A".repeat(60) + "B".repeat(40) + "it's";
        Card card =
                only("LONG    = '" + "A".repeat(60) + "B".repeat(7) + "&'", "CONTINUE  '" + "B".repeat(33) + "it''s'");
        assertThat(card.value()).isEqualTo(text).hasSize(104);
    }

    @Test
    void namesHierarchCardsWithDots() {
        assertThat(only("HIERARCH ESO DET DIT = 12.5 / exposure"))
                .isEqualTo(new Card("ESO.DET.DIT", "12.5", "exposure", false));
        assertThat(only("HIERARCH Filter Name = 'Luminance'").keyword()).isEqualTo("FILTER.NAME");
        assertThat(only("HIERARCH LONG = 'a&'", "CONTINUE  'b'").value()).isEqualTo("ab");
    }

    @Test
    void takesLowerCaseKeywords() {
        assertThat(only("exptime =                 12.0").keyword()).isEqualTo("EXPTIME");
    }

    @Test
    void keepsHistoryAndDropsCardsWithoutValue() {
        CardReader reader = read("HISTORY combined of 12", "NOEQUALS   5", "        = 3", "");
        assertThat(reader.cards().get(0)).isEqualTo(new Card("HISTORY", "combined of 12", "", false));
        assertThat(reader.cards()).hasSize(1);
        assertThat(reader.oddities()).isEmpty();
    }

    @Test
    void keepsLatinLetters() {
        assertThat(only("OBSERVER= 'Caf\u00e9 \u00b0C'").value()).isEqualTo("Caf\u00e9 \u00b0C");
    }

    @Test
    void saysOnceWhatIsDamaged() {
        CardReader reader = read(
                "OBJECT  = 'never closed",
                "\tTABKEY= 1",
                "K\u00e4se    = 1",
                "CCD-TEMP=-20",
                "\u0001      = 2",
                "A B     = 3");
        assertThat(reader.oddities()).hasSize(1);
        assertThat(reader.oddities().get(0).what())
                .contains("6 header cards", "OBJECT (no closing quote)", "K?SE (not a keyword)", "and 2 more");
        assertThat(reader.cards().get(0).value()).isEqualTo("never closed");
    }

    /** Section 4.2.4, and D exponents of section 4.2.4; everything else is no number. */
    @ParameterizedTest
    @CsvSource({
        "12, 12",
        "-3.5, -3.5",
        "+.5, 0.5",
        "32768., 32768",
        "3.2768E4, 32768",
        "1.2D+02, 120",
        "1d-3, 0.001",
        "1.5e, NaN",
        "'-20,5', NaN",
        "0x10, NaN",
        "1f, NaN",
        "NaN, NaN",
        "Infinity, NaN",
        "1e999, NaN",
        "'', NaN",
        "1 2, NaN",
        "T, NaN"
    })
    void readsNumbers(String text, Double number) {
        assertThat(Double.valueOf(Numerals.parse(text))).isEqualTo(number);
    }
}
