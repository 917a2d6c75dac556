package noctuary.rig;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Arithmetic on numbers of which some may be absent: the result is absent where an input is, or where it is not finite.
 */
final class Maybe {
    private Maybe() {}

    static OptionalDouble of(OptionalDouble a, DoubleUnaryOperator formula) {
        return a.isPresent() ? finite(formula.applyAsDouble(a.getAsDouble())) : OptionalDouble.empty();
    }

    static OptionalDouble of(OptionalDouble a, OptionalDouble b, DoubleBinaryOperator formula) {
        return a.isPresent() && b.isPresent()
                ? finite(formula.applyAsDouble(a.getAsDouble(), b.getAsDouble()))
                : OptionalDouble.empty();
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
