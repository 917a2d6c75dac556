package noctuary.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Currency;
import noctuary.fact.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedQuantityTest {
    /**
     * Factors of NIST SP 811 (2008), appendix B.8: inch 25.4 mm, pound 0.453 592 37 kg, ounce 0.028 349 523 125 kg
     * (printed there to seven digits, 2.834 952 E-02), all exact since the yard and pound agreement of 1959; minute 60
     * s, hour 3600 s, degree 60 minutes of arc of 60 seconds; degree Fahrenheit (t - 32) / 1.8. Hence also a 2 in
     * filter thread is 50.8 mm, 212 °F is 100 °C, and -40 is the same in both.
     */
    @ParameterizedTest
    @CsvSource({
        "1 in, MILLIMETRE, 25.4",
        "2 in, MILLIMETRE, 50.8",
        "1.25 in, MILLIMETRE, 31.75",
        "8 in, METRE, 0.2032",
        "1 lb, KILOGRAM, 0.45359237",
        "44 lb, KILOGRAM, 19.95806428",
        "1 oz, KILOGRAM, 0.028349523125",
        "16 oz, KILOGRAM, 0.45359237",
        "1 h, SECOND, 3600",
        "90 min, SECOND, 5400",
        "1 deg, ARCSECOND, 3600",
        "1 arcmin, ARCSECOND, 60",
        "1.5 arcmin, DEGREE, 0.025",
        "212 °F, CELSIUS, 100",
        "32 °F, CELSIUS, 0",
        "-40 °F, CELSIUS, -40",
        "14 °F, CELSIUS, -10",
        "−10 °C, CELSIUS, -10",
        "750 mm, MILLIMETRE, 750",
        "75 cm, MILLIMETRE, 750",
        "0.75 m, MILLIMETRE, 750",
        "3.76 µm, MICROMETRE, 3.76",
        "3.76 μm, MICROMETRE, 3.76",
        "3.76 um, MICROMETRE, 3.76",
        "0.00376 mm, MICROMETRE, 3.76",
        "250 g, KILOGRAM, 0.25",
        "0.62 arcsec, ARCSECOND, 0.62",
        "44.3°, DEGREE, 44.3",
        "1.6 e, ELECTRON, 1.6",
        "1.6e, ELECTRON, 1.6",
        "1.6 e-, ELECTRON, 1.6",
        "4e4 e, ELECTRON, 40000",
        "0.3 e/ADU, ELECTRON_PER_ADU, 0.3",
        "512 ADU, ADU, 512",
        "2.5 px, PIXEL, 2.5",
        "+.5 mm, MILLIMETRE, 0.5"
    })
    void convertsExactly(String text, Unit kept, double expected) throws Unfit {
        assertThat(TypedQuantity.in(kept).of(text).value()).isCloseTo(expected, within(Math.ulp(expected)));
        assertThat(TypedQuantity.in(kept).of(text).unit()).isEqualTo(kept);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "750", "mm", "", "7 5 mm", "1.2.3 mm", "--5 mm", "5 - mm", "1,5 mm", "1,234.5 mm", "12 345 mm",
                        "5 mm mm",
                "5mm2", "NaN mm", "Infinity mm", "1e999 mm", "0x1p3 mm", "٣ mm", "½ in", "5 MM", "5 in²", "1/2 in",
                        "6\""
            })
    void refusesWhatItCannotBeSureOf(String text) {
        assertThatThrownBy(() -> TypedQuantity.in(Unit.MILLIMETRE).of(text)).isInstanceOf(Unfit.class);
    }

    @ParameterizedTest
    @CsvSource({"6 inches, in", "6 micron, µm", "5 MM, mm", "5 mn, mm", "6 Inch, in"})
    void namesTheLikelyUnit(String text, String unit) {
        assertThatThrownBy(() -> TypedQuantity.in(Unit.MILLIMETRE).of(text))
                .isInstanceOfSatisfying(
                        Unfit.class, e -> assertThat(e.hint()).isEqualTo("did you mean \"" + unit + "\"?"));
    }

    @Test
    void takesEveryCurrencyOfIso4217() throws Unfit {
        for (Currency currency : Currency.getAvailableCurrencies()) {
            TypedPrice price = TypedPrice.of("12.50 " + currency.getCurrencyCode());
            assertThat(price.currency()).isEqualTo(currency.getCurrencyCode());
            assertThat(price.amount()).isEqualByComparingTo("12.5");
        }
    }
}
