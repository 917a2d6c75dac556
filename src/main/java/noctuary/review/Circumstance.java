package noctuary.review;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import noctuary.stats.Robust;

/**
 * One circumstance on both sides.
 *
 * @param decimals to which it is worth printing
 */
public record Circumstance(String label, String unit, int decimals, Optional<Range> before, Optional<Range> after) {

    /** Over the nights of a side. */
    public record Range(double low, double median, double high, int nights) {
        static Optional<Range> of(DoubleStream values) {
            double[] known = values.toArray();
            return known.length == 0
                    ? Optional.empty()
                    : Optional.of(new Range(
                            Arrays.stream(known).min().orElseThrow(),
                            Robust.median(known),
                            Arrays.stream(known).max().orElseThrow(),
                            known.length));
        }
    }

    /** What is known of sky and work on both sides. */
    static List<Circumstance> of(Change change) {
        return List.of(
                of("Airmass", "", 2, change, n -> n.sky().airmass()),
                of("Moonlight at the target", "mag", 2, change, n -> n.sky().moonMagnitudes()),
                of("Moon above the horizon", "deg", 0, change, n -> n.sky().moonAltitudeDeg()),
                of("Moon from the target", "deg", 0, change, n -> n.sky().moonDistanceDeg()),
                of("Moon lit", "%", 0, change, n -> percent(n.sky().moonLit())),
                of("Sun above the horizon", "deg", 0, change, n -> n.sky().sunAltitudeDeg()),
                of("Dark hours of the night", "h", 1, change, n -> n.sky().darkHours()),
                of("Exposure", "min", 0, change, n -> minutes(n.exposureSeconds())));
    }

    private static Circumstance of(
            String label, String unit, int decimals, Change change, Function<EntryNight, OptionalDouble> value) {
        return new Circumstance(label, unit, decimals, range(change.before(), value), range(change.after(), value));
    }

    private static Optional<Range> range(Side side, Function<EntryNight, OptionalDouble> value) {
        return Range.of(side.nights().stream()
                .map(value)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble));
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
    }

    private static OptionalDouble minutes(OptionalDouble seconds) {
        return seconds.isPresent() ? OptionalDouble.of(seconds.getAsDouble() / 60) : seconds;
    }
}
