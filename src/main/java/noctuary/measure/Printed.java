package noctuary.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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

    /** Both with so many decimals that the error has two digits. */
    static String withError(double value, double error) {
        if (!(error > 0)) {
            return number(value);
        }
        int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(error)));
        return fixed(value, decimals) + " ± " + fixed(error, decimals);
    }

    private static String fixed(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }
}
