package noctuary.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;

/**
 * How much a keeper's values scatter, as a share of them: the pooled standard deviation of their logarithms about the
 * mean of each group.
 */
final class OwnScatter {
    /** Degrees of freedom below which a scatter is a guess. */
    private static final int FEWEST = 2;

    private OwnScatter() {}

    /** From night to night within a side. */
    static OptionalDouble ofNights(MeasureNights nights) {
        return pooled(List.of(logs(nights.before()), logs(nights.after())));
    }

    /** From frame to frame within a night, of the star width. */
    static OptionalDouble ofFrames(Change change) {
        List<double[]> groups = new ArrayList<>();
        Stream.of(change.before(), change.after())
                .flatMap(side -> side.nights().stream())
                .filter(n -> !n.stacked())
                .forEach(n -> groups.add(
                        n.traits().widths().stream().mapToDouble(Math::log).toArray()));
        return pooled(groups);
    }

    /** Median FWHM of each file that has one, px. */
    static List<Double> widths(List<FrameSheet> files) {
        return files.stream()
                .flatMap(f -> f.report().stars().stream())
                .map(FrameReport.Stars::fwhmPx)
                .map(FrameReport.Spread::median)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
    }

    /** Of the differences between the sides of one entry with the same other steps; absent for fewer than three such pairs. */
    static OptionalDouble ofPairs(MeasureNights nights) {
        double[] differences = nights.before().stream()
                .flatMap(b -> nights.after().stream()
                        .filter(a -> a.slug().equals(b.slug()) && a.recipe().equals(b.recipe()))
                        .limit(1)
                        .filter(a -> a.value() > 0 && b.value() > 0)
                        .map(a -> Math.log(a.value() / b.value())))
                .mapToDouble(d -> d)
                .toArray();
        return pooled(List.of(differences));
    }

    private static double[] logs(List<NightValue> values) {
        return values.stream()
                .mapToDouble(NightValue::value)
                .filter(v -> v > 0)
                .map(Math::log)
                .toArray();
    }

    private static OptionalDouble pooled(List<double[]> groups) {
        double squares = 0;
        int freedom = 0;
        for (double[] group : groups) {
            double mean = Arrays.stream(group).average().orElse(0);
            squares += Arrays.stream(group).map(v -> (v - mean) * (v - mean)).sum();
            freedom += Math.max(0, group.length - 1);
        }
        return freedom < FEWEST ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / freedom));
    }
}
