package noctuary.rig;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The distance from the corrector's rear shoulder to the sensor, summed part by part, beside the distance wanted.
 *
 * @param statedMm as the corrector's maker states, without glass
 * @param glassShiftMm how far all filter glass moves the focus back, t (n - 1) / n each
 * @param rows every part of the train in order
 * @param unmeasured names of parts that have neither length nor glass
 */
public record Spacing(OptionalDouble statedMm, double glassShiftMm, List<Row> rows, List<String> unmeasured) {
    /** Refractive index of BK7 crown glass at 587.6 nm, taken for every filter (from memory). */
    public static final double FILTER_GLASS_INDEX = 1.5168;
    /** Error of spacing that rarely shows, mm; common practice, no source: the maker's drawing overrides. */
    public static final double TOLERANCE_MM = 0.5;

    public Spacing {
        rows = List.copyOf(rows);
        unmeasured = List.copyOf(unmeasured);
    }

    /**
     * One part of the sum.
     *
     * @param countedMm 0 for the corrector itself, which the distance starts behind, and for a filter inside another
     * part
     * @param glassShiftMm 0 for a part without glass
     */
    public record Row(String name, OptionalDouble countedMm, double glassShiftMm) {}

    public static Spacing of(RigSpec rig) {
        List<RigSpec.TrainPart> train = rig.train();
        List<Row> rows = IntStream.range(0, train.size())
                .mapToObj(i -> row(train.get(i), i == 0))
                .toList();
        return new Spacing(
                rig.optics().backFocusMm(),
                rows.stream().mapToDouble(Row::glassShiftMm).sum(),
                rows,
                rows.stream()
                        .filter(r -> r.countedMm().isEmpty())
                        .map(Row::name)
                        .toList());
    }

    /** The distance wanted with this glass in the beam. */
    public OptionalDouble requiredMm() {
        return Maybe.of(statedMm, stated -> stated + glassShiftMm);
    }

    /** The distance there is; absent when a part's length is not written or nothing adds to it. */
    public OptionalDouble actualMm() {
        double sum = rows.stream().mapToDouble(r -> r.countedMm().orElse(0)).sum();
        return unmeasured.isEmpty() && sum > 0 ? OptionalDouble.of(sum) : OptionalDouble.empty();
    }

    /** Actual minus required: negative where the sensor is too close and a shim is wanted. */
    public OptionalDouble residualMm() {
        return Maybe.of(actualMm(), requiredMm(), (actual, required) -> actual - required);
    }

    private static Row row(RigSpec.TrainPart part, boolean first) {
        double shift = Maybe.of(part.glassMm(), t -> Optics.glassShiftMm(t, FILTER_GLASS_INDEX))
                .orElse(0);
        boolean start = first && (part.lengthMm().isEmpty() || PartRole.isCorrector(part.name()));
        boolean inside = part.lengthMm().isEmpty() && part.glassMm().isPresent();
        return new Row(part.name(), start || inside ? OptionalDouble.of(0) : part.lengthMm(), shift);
    }
}
