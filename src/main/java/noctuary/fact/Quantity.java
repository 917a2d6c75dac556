package noctuary.fact;

import java.util.OptionalDouble;

/**
 * A number with its unit and, where known, its standard error in the same unit.
 *
 * @param value finite
 */
public record Quantity(double value, Unit unit, OptionalDouble standardError) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity needs a finite value, not " + value);
        }
    }

    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit, OptionalDouble.empty());
    }

    public static Quantity of(double value, Unit unit, double standardError) {
        return new Quantity(value, unit, OptionalDouble.of(standardError));
    }
}
