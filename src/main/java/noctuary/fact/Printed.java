package noctuary.fact;

import java.math.BigDecimal;
import java.math.MathContext;

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

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
