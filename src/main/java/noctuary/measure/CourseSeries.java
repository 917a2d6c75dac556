package noctuary.measure;

import java.time.Duration;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import noctuary.stats.TheilSen;

/** Frames of one night whose light can be compared, by time. A series of fewer than four carries no judgement. */
record CourseSeries(List<CourseFrame> frames) {
    static final int FEWEST = 4;
    /** Stars widen with the airmass to this power: Fried 1966, Kolmogorov turbulence. */
    private static final double SEEING_POWER = 0.6;

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    CourseSeries {
        frames = List.copyOf(frames);
    }

    CourseSeries only(Predicate<CourseFrame> which) {
        return new CourseSeries(frames.stream().filter(which).toList());
    }

    boolean enough() {
        return frames.size() >= FEWEST;
    }

    int size() {
        return frames.size();
    }

    boolean airmassKnown() {
        return frames.stream().allMatch(f -> f.airmass().isPresent());
    }

    double[] hours() {
        return values(f -> Duration.between(frames.get(0).taken(), f.taken()).toMillis() / 3_600_000.0);
    }

    double spanHours() {
        return hours()[size() - 1];
    }

    double[] values(ToDoubleFunction<CourseFrame> value) {
        return frames.stream().mapToDouble(value).toArray();
    }

    TheilSen trend(double[] values) {
        return TheilSen.fit(hours(), values);
    }

    /** A length that seeing sets, brought to airmass 1; as it is where the airmass is not known. */
    double[] atZenith(Function<CourseFrame, OptionalDouble> width) {
        return airmassKnown()
                ? values(
                        f -> width.apply(f).getAsDouble() / Math.pow(f.airmass().getAsDouble(), SEEING_POWER))
                : values(f -> width.apply(f).getAsDouble());
    }

    String clocks(List<Integer> which) {
        return which.stream().map(i -> clock(frames.get(i))).collect(Collectors.joining(", "));
    }

    List<Integer> where(Predicate<Integer> which) {
        return IntStream.range(0, size()).boxed().filter(which).toList();
    }

    static String clock(CourseFrame frame) {
        return CLOCK.format(frame.taken().atZone(ZoneOffset.UTC)) + " UTC";
    }
}
