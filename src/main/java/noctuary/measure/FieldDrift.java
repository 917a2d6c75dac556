package noctuary.measure;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import noctuary.measure.NightCourse.DriftRate;
import noctuary.stats.TheilSen;

/** The rate at which the field wanders over the sensor. Frames of the other side of the mount are left out. */
final class FieldDrift {
    private static final int FEWEST = 4;

    private FieldDrift() {}

    static Optional<DriftRate> of(List<CourseFrame> frames) {
        List<CourseFrame> sameSide = frames.stream()
                .filter(f -> f.field().isPresent() && Math.abs(f.field().get().rotationDeg()) < 90)
                .toList();
        if (sameSide.size() < FEWEST) {
            return Optional.empty();
        }
        double x = slope(sameSide, f -> f.field().orElseThrow().xPx());
        double y = slope(sameSide, f -> f.field().orElseThrow().yPx());
        double turn = slope(sameSide, f -> f.field().orElseThrow().rotationDeg());
        boolean scaled = sameSide.stream()
                .allMatch(f -> f.field().orElseThrow().xArcsec().isPresent());
        return Optional.of(new DriftRate(
                x,
                y,
                scaled
                        ? OptionalDouble.of(slope(
                                sameSide, f -> f.field().orElseThrow().xArcsec().getAsDouble()))
                        : OptionalDouble.empty(),
                scaled
                        ? OptionalDouble.of(slope(
                                sameSide, f -> f.field().orElseThrow().yArcsec().getAsDouble()))
                        : OptionalDouble.empty(),
                turn * 60));
    }

    private static double slope(List<CourseFrame> frames, ToDoubleFunction<CourseFrame> value) {
        Instant first = frames.get(0).taken();
        double[] minutes = frames.stream()
                .mapToDouble(f -> Duration.between(first, f.taken()).toMillis() / 60_000.0)
                .toArray();
        return TheilSen.fit(minutes, frames.stream().mapToDouble(value).toArray())
                .slope();
    }
}
