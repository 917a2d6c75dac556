package noctuary.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import noctuary.fact.Quantity;
import noctuary.fact.Unit;

/** Numbers as they stand in sentences and formulas: four significant digits, no exponent, unit behind. */
final class Printed {
    private static final MathContext FOUR = new MathContext(4);

    private Printed() {}

    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value, FOUR).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    static String of(double value, Unit unit) {
        return unit.symbol().isEmpty() ? number(value) : number(value) + " " + unit.symbol();
    }

    static String of(Quantity quantity) {
        return of(quantity.value(), quantity.unit());
    }
}
