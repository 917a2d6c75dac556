package noctuary.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToDoubleFunction;

/** Several p values of questions asked together, made larger so that each may be held against the level alone. */
public final class Family {
    private Family() {}

    /**
     * Holm (1979, Scand. J. Stat. 6, 65): running maximum of (m - i + 1) p(i) from the smallest up. At most the level's
     * share of families says anything false, whatever ties the questions together.
     */
    public static double[] holm(double... p) {
        double[] weights = new double[p.length];
        Arrays.fill(weights, 1);
        return holm(p, weights);
    }

    /**
     * The same with questions of unequal weight, named beforehand (Holm 1979, section 3): in order of p / w, the running
     * maximum of p(i) times the weights from i on over w(i).
     */
    public static double[] holm(double[] p, double[] weights) {
        Integer[] order = ascending(i -> p[i] / weights[i], p.length);
        double[] adjusted = new double[p.length];
        double left = Arrays.stream(weights).sum();
        double running = 0;
        for (int i : order) {
            running = Math.max(running, Math.min(1, p[i] * left / weights[i]));
            adjusted[i] = running;
            left -= weights[i];
        }
        return adjusted;
    }

    /**
     * Which questions are worth asking together, from what is possible alone: those whose smallest p reaches its share of
     * the level, after leaving out the most hopeless one as long as one does not (in the manner of Tarone 1990,
     * Biometrics 46, 515).
     *
     * @param smallest p that each question could at best give
     */
    public static boolean[] testable(double level, double[] smallest, double[] weights) {
        boolean[] asked = new boolean[smallest.length];
        Arrays.fill(asked, true);
        for (int left = smallest.length; left > 0; left--) {
            double all = 0;
            int worst = -1;
            for (int i = 0; i < asked.length; i++) {
                all += asked[i] ? weights[i] : 0;
                worst = asked[i] && (worst < 0 || smallest[i] / weights[i] > smallest[worst] / weights[worst])
                        ? i
                        : worst;
            }
            if (smallest[worst] <= level * weights[worst] / all * (1 + 1e-12)) {
                return asked;
            }
            asked[worst] = false;
        }
        return asked;
    }

    /** Benjamini &amp; Hochberg (1995, JRSS B 57, 289): running minimum of m p(i) / i from the largest down. */
    public static double[] benjaminiHochberg(double... p) {
        Integer[] order = ascending(i -> p[i], p.length);
        double[] adjusted = new double[p.length];
        double running = 1;
        for (int i = p.length - 1; i >= 0; i--) {
            running = Math.min(running, p.length * p[order[i]] / (i + 1));
            adjusted[order[i]] = running;
        }
        return adjusted;
    }

    private static Integer[] ascending(IntToDoubleFunction key, int count) {
        Integer[] order = new Integer[count];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(key::applyAsDouble));
        return order;
    }
}
