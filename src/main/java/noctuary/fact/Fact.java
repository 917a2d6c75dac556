package noctuary.fact;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something known about an entry, with who says so, or the reason why it is not known.
 *
 * @param <T> {@link Quantity} for numbers, {@link String} or a date otherwise
 */
public sealed interface Fact<T> {
    /** One answer and its origin. */
    record Reading<T>(T value, Origin origin) {}

    /** The reading that counts, and the readings of other origins that disagree with it (empty when none does). */
    record Known<T>(Reading<T> reading, List<Reading<T>> disagreeing) implements Fact<T> {
        public Known {
            disagreeing = List.copyOf(disagreeing);
        }
    }

    /** Not known; {@code why} is a sentence for the keeper. */
    record Missing<T>(String why) implements Fact<T> {}

    static <T> Fact<T> of(T value, Origin origin) {
        return new Known<>(new Reading<>(value, origin), List.of());
    }

    static <T> Fact<T> missing(String why) {
        return new Missing<>(why);
    }

    default Optional<T> value() {
        return this instanceof Known<T> known ? Optional.of(known.reading().value()) : Optional.empty();
    }

    /** The value turned by {@code how}, or empty when missing. */
    default <R> Optional<R> map(Function<T, R> how) {
        return value().map(how);
    }
}
