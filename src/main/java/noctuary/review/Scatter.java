package noctuary.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import noctuary.stats.Power;
import noctuary.stats.Regression;

/** How many more nights a verdict would take, from how much these scatter. */
final class Scatter {
    /** A change worth knowing of, as a share of the value before. */
    static final double WORTH = 0.2;

    /** Chance that the nights wanted show it. */
    private static final double POWER = 0.8;

    private static final int MOST = 200;

    private Scatter() {}

    /**
     * More nights on both sides for a change of {@link #WORTH}.
     *
     * @param before middle value before, in the unit
     * @param level that p is held against
     */
    static Wanted wanted(Design design, Scale scale, double before, double level) {
        int have = Math.min(design.values(false), design.values(true));
        OptionalDouble sd = sd(design, scale);
        double step = scale.step(WORTH, before);
        OptionalInt enough = sd.isPresent() && sd.getAsDouble() > 0 && step > 0
                ? Power.perSide(step / sd.getAsDouble(), POWER, level, MOST)
                : OptionalInt.empty();
        int fewest = fewest(level);
        int each = Math.max(enough.orElse(fewest), Math.max(fewest, have + 1));
        return new Wanted(
                Math.max(0, each - design.values(false)),
                Math.max(0, each - design.values(true)),
                enough.isPresent() ? WORTH : 0);
    }

    /** Nights on each side below which no p reaches the level: 2 / C(2 n, n). */
    static int fewest(double level) {
        double p = 1;
        int n = 1;
        while (p > level) {
            n++;
            p *= n / (2.0 * (2 * n - 1));
        }
        return n;
    }

    /** Night to night, inside blocks and sides; empty when nothing is left over to judge by. */
    private static OptionalDouble sd(Design design, Scale scale) {
        List<Unit> units = design.units().toList();
        if (units.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<double[]> columns = new ArrayList<>();
        columns.add(units.stream().mapToDouble(u -> u.after() ? 1 : 0).toArray());
        for (List<Unit> block : design.blocks().subList(1, design.blocks().size())) {
            columns.add(
                    units.stream().mapToDouble(u -> block.contains(u) ? 1 : 0).toArray());
        }
        double[] values =
                units.stream().mapToDouble(u -> scale.of(u.night().value())).toArray();
        return Regression.find(values, columns.toArray(double[][]::new))
                .map(fit -> OptionalDouble.of(fit.residualSd()))
                .orElse(OptionalDouble.empty());
    }
}
