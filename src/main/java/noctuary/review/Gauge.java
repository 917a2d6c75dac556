package noctuary.review;

import java.util.Optional;
import java.util.function.Function;

/**
 * How a measure is read from a night, and which nights it can compare.
 *
 * @param likeness nights are compared only where this agrees on both sides; the same for all where all compare
 * @param alikeIn what {@code likeness} is, for a sentence, such as {@code filter}
 * @param unfit why the measure says nothing of the change at all
 */
record Gauge(
        Measure measure,
        Function<EntryNight, Reading> read,
        Function<EntryNight, Object> likeness,
        String alikeIn,
        Function<Change, Optional<String>> unfit) {

    static Gauge of(Measure measure, Function<EntryNight, Reading> read) {
        return new Gauge(measure, read, n -> "", "", change -> Optional.empty());
    }

    Gauge amongAlike(String what, Function<EntryNight, Object> key) {
        return new Gauge(measure, read, key, what, unfit);
    }

    Gauge unless(Function<Change, Optional<String>> reason) {
        return new Gauge(measure, read, likeness, alikeIn, reason);
    }
}
