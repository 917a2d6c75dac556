package noctuary.stats;

import java.util.OptionalInt;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How many values on each side show a shift, for normal values and a two-sided test by Student's t. A shift d is in
 * standard deviations of the values (of the differences, for pairs).
 */
public final class Power {
    private static final double TINY = 1e-10;
    private static final int MOST_STEPS = 100;

    private Power() {}

    /** Chance that {@code before} and {@code after} independent values reach the level; 0 for fewer than three in all. */
    public static double unpaired(double d, int before, int after, double level) {
        int df = before + after - 2;
        return df < 1 || before < 1 || after < 1
                ? 0
                : of(d * Math.sqrt((double) before * after / (before + after)), df, level);
    }

    /** Chance that {@code pairs} reach it; 0 for fewer than two. */
    public static double paired(double d, int pairs, double level) {
        return pairs < 2 ? 0 : of(d * Math.sqrt(pairs), pairs - 1, level);
    }

    /** The fewest values on each side with at least {@code power}; empty beyond {@code most}. */
    public static OptionalInt perSide(double d, double power, double level, int most) {
        return fewest(n -> unpaired(d, n, n, level), power, most);
    }

    /** The fewest values after, with {@code before} already there; empty beyond {@code most}. */
    public static OptionalInt after(double d, int before, double power, double level, int most) {
        return fewest(n -> unpaired(d, before, n, level), power, most);
    }

    /** The fewest pairs; empty beyond {@code most}. */
    public static OptionalInt pairs(double d, double power, double level, int most) {
        return fewest(n -> paired(d, n, level), power, most);
    }

    /** The smallest shift that so many values on the two sides show with at least {@code power}. */
    public static double detectable(int before, int after, double power, double level) {
        int df = before + after - 2;
        double t = StudentTest.quantile(1 - level / 2, df);
        double high = 1;
        while (beyond(t, df, high) < power) {
            high *= 2;
        }
        double delta =
                new BracketingNthOrderBrentSolver(TINY, 5).solve(MOST_STEPS, d -> beyond(t, df, d) - power, 0, high);
        return delta / Math.sqrt((double) before * after / (before + after));
    }

    private interface Chance {
        double of(int n);
    }

    private static OptionalInt fewest(Chance chance, double power, int most) {
        if (chance.of(most) < power) {
            return OptionalInt.empty();
        }
        int low = 0;
        int high = most;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (chance.of(middle) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalInt.of(high);
    }

    private static double of(double noncentrality, int df, double level) {
        return beyond(StudentTest.quantile(1 - level / 2, df), df, Math.abs(noncentrality));
    }

    private static double beyond(double t, int df, double delta) {
        return 1 - NoncentralT.below(t, df, delta) + NoncentralT.below(-t, df, delta);
    }
}
