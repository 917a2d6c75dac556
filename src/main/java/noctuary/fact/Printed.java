package noctuary.fact;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in sentences and formulas: four significant digits, no exponent, unit behind. */
public final class Printed {
    private static final MathContext FOUR = new MathContext(4);

    private Printed() {}

    public static String number(double value) {
        return plain(new BigDecimal(value, FOUR));
    }

    /** All digits of the shortest decimal that stands for the value. */
    public static String exact(double value) {
        return plain(BigDecimal.valueOf(value));
    }

    public static String of(double value, Unit unit) {
        return unit.symbol().isEmpty() ? number(value) : number(value) + " " + unit.symbol();
    }

    public static String of(Quantity quantity) {
        return of(quantity.value(), quantity.unit());
    }

    /** Both with so many decimals that the error has two digits. */
    public static String withError(double value, double error) {
        if (!(error > 0)) {
            return number(value);
        }
        int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(error)));
        return fixed(value, decimals) + " ± " + fixed(error, decimals);
    }

    private static String fixed(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
