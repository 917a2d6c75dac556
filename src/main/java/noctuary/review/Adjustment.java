package noctuary.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import noctuary.stats.FreedmanLane;
import noctuary.stats.Regression;
import noctuary.stats.StudentTest;

/**
 * The shift at equal airmass and Moon: regression of the values on the side, ln X, the Moon's magnitudes and the blocks.
 * At most one condition for five nights (common practice, no source).
 *
 * @param shift on the measure's scale
 * @param p the larger of Student's, exact for normal scatter, and that of relabelled residuals, which asks no such
 *     scatter: too small only where both are
 */
record Adjustment(StudentTest shift, double p, List<Influence> taken) {
    private static final long SEED = 20_260_102;

    static final int NIGHTS_A_CONDITION = 5;

    /** Conditions that could be taken out: known of every night, and not the same on all. */
    static List<Influence> candidates(Measure measure, Design design) {
        List<Unit> units = design.units().toList();
        List<Influence> all = new ArrayList<>(measure.follows());
        List.of(Influence.AIRMASS, Influence.MOON).stream()
                .filter(i -> !all.contains(i))
                .forEach(all::add);
        return all.stream()
                .filter(i -> i == Influence.AIRMASS || i == Influence.MOON)
                .filter(i -> Overlap.known(units, i) && Overlap.varies(units, i))
                .toList();
    }

    /** Whether the nights are enough for so many. */
    static boolean affords(Design design, int conditions) {
        int free = design.values(false) + design.values(true) - design.blocks().size() + 1;
        return conditions * NIGHTS_A_CONDITION <= free;
    }

    /** Empty when the nights are too few, or do not tell the side from the conditions. */
    static Optional<Adjustment> of(Design design, Scale scale, List<Influence> taken) {
        return taken.isEmpty() || !affords(design, taken.size())
                ? Optional.empty()
                : fit(design, scale, taken).map(fit -> of(design, scale, taken, fit.coefficient(1)));
    }

    private static Adjustment of(Design design, Scale scale, List<Influence> taken, StudentTest shift) {
        List<Unit> units = design.units().toList();
        double relabelled = FreedmanLane.p(
                column(units, u -> scale.of(u.night().value())),
                column(units, u -> u.after() ? 1 : 0),
                taken.stream().map(i -> conditions(units, i)).toArray(double[][]::new),
                design.places(),
                SEED);
        return new Adjustment(shift, Math.max(shift.p(), relabelled), taken);
    }

    /** The values by intercept, side, conditions and all blocks but the first; empty where they depend on one another. */
    static Optional<Regression> fit(Design design, Scale scale, List<Influence> taken) {
        List<Unit> units = design.units().toList();
        List<double[]> columns = new ArrayList<>();
        columns.add(column(units, u -> u.after() ? 1 : 0));
        for (Influence influence : taken) {
            columns.add(conditions(units, influence));
        }
        int[] places = design.places();
        for (int i = 1; i < design.blocks().size(); i++) {
            int block = i;
            columns.add(Arrays.stream(places)
                    .mapToDouble(place -> place == block ? 1 : 0)
                    .toArray());
        }
        return Regression.find(column(units, u -> scale.of(u.night().value())), columns.toArray(double[][]::new));
    }

    private static double[] conditions(List<Unit> units, Influence influence) {
        return column(units, u -> Overlap.value(u.night(), influence).getAsDouble());
    }

    private static double[] column(List<Unit> units, ToDoubleFunction<Unit> value) {
        return units.stream().mapToDouble(value).toArray();
    }
}
