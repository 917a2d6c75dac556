package noctuary.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import noctuary.stats.Robust;

/**
 * One year's values of a measure on one side.
 *
 * @param low 16th percentile; absent below three values
 * @param high 84th percentile; absent as {@code low}
 */
public record YearSpan(int year, int values, OptionalDouble low, double median, OptionalDouble high) {
    private static final int FEWEST = 3;

    /** By year. */
    public static List<YearSpan> of(List<NightValue> values) {
        return values.stream()
                .collect(Collectors.groupingBy(n -> n.night().getYear(), TreeMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(e -> of(e.getKey(), e.getValue()))
                .toList();
    }

    private static YearSpan of(int year, List<NightValue> values) {
        double[] sorted =
                values.stream().mapToDouble(NightValue::value).sorted().toArray();
        boolean enough = sorted.length >= FEWEST;
        return new YearSpan(
                year,
                sorted.length,
                enough ? OptionalDouble.of(Robust.quantileOfSorted(sorted, 0.16)) : OptionalDouble.empty(),
                Robust.quantileOfSorted(sorted, 0.5),
                enough ? OptionalDouble.of(Robust.quantileOfSorted(sorted, 0.84)) : OptionalDouble.empty());
    }
}
