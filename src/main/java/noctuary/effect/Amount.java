package noctuary.effect;

import java.util.OptionalDouble;

/**
 * A number, or the reason why there is none.
 *
 * @param why a sentence without its full stop; empty when there is a number
 */
public record Amount(OptionalDouble value, String why) {
    public static Amount of(double value) {
        return new Amount(OptionalDouble.of(value), "");
    }

    public static Amount absent(String why) {
        return new Amount(OptionalDouble.empty(), why);
    }

    /** A finite value, else the reason. */
    static Amount known(double value, String otherwise) {
        return Double.isFinite(value) ? of(value) : absent(otherwise);
    }
}
