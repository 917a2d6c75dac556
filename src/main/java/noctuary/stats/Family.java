package noctuary.stats;

import java.util.Arrays;
import java.util.Comparator;

/** Several p values of questions asked together, made larger so that each may be held against the level alone. */
public final class Family {
    private Family() {}

    /**
     * Holm (1979, Scand. J. Stat. 6, 65): running maximum of (m - i + 1) p(i) from the smallest up. At most the level's
     * share of families says anything false, whatever ties the questions together.
     */
    public static double[] holm(double... p) {
        Integer[] order = ascending(p);
        double[] adjusted = new double[p.length];
        double running = 0;
        for (int i = 0; i < p.length; i++) {
            running = Math.max(running, Math.min(1, (p.length - i) * p[order[i]]));
            adjusted[order[i]] = running;
        }
        return adjusted;
    }

    /**
     * The smallest p that a question must be able to reach to be worth asking: level / K for the smallest K that no more
     * than K questions can reach (Tarone 1990, Biometrics 46, 515). Looks at what is possible, never at what came out.
     *
     * @param smallest p that each question could at best give
     */
    public static double testableFrom(double level, double... smallest) {
        int size = 1;
        while (reaching(level / size, smallest) > size) {
            size++;
        }
        return level / size;
    }

    private static long reaching(double p, double[] smallest) {
        return Arrays.stream(smallest).filter(s -> s <= p).count();
    }

    /** Benjamini &amp; Hochberg (1995, JRSS B 57, 289): running minimum of m p(i) / i from the largest down. */
    public static double[] benjaminiHochberg(double... p) {
        Integer[] order = ascending(p);
        double[] adjusted = new double[p.length];
        double running = 1;
        for (int i = p.length - 1; i >= 0; i--) {
            running = Math.min(running, p.length * p[order[i]] / (i + 1));
            adjusted[order[i]] = running;
        }
        return adjusted;
    }

    private static Integer[] ascending(double[] p) {
        Integer[] order = new Integer[p.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> p[i]));
        return order;
    }
}
