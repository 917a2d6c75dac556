package noctuary.advice;

import java.util.OptionalDouble;

/**
 * One term of a budget.
 *
 * @param amount in the budget's unit, to be squared and summed; absent where it is not known
 * @param how where it comes from, or why it is not known
 */
public record Term(String id, String label, OptionalDouble amount, String how) {
    static Term known(String id, String label, double amount, String how) {
        return new Term(id, label, OptionalDouble.of(amount), how);
    }

    static Term unknown(String id, String label, String why) {
        return new Term(id, label, OptionalDouble.empty(), why);
    }

    double squared() {
        return amount.isPresent() ? amount.getAsDouble() * amount.getAsDouble() : 0;
    }
}
