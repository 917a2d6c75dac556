package noctuary.stars.sim;

import java.util.SplittableRandom;

/** Seeded draws: Poisson by inversion for small means, by a rounded normal (error below 1 % of sigma) above 60. */
public final class Dice {
    private final SplittableRandom random;
    private double spare = Double.NaN;

    public Dice(long seed) {
        random = new SplittableRandom(seed);
    }

    public double uniform(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    public int below(int bound) {
        return random.nextInt(bound);
    }

    /** Standard normal, polar method of Marsaglia. */
    public double normal() {
        if (!Double.isNaN(spare)) {
            double value = spare;
            spare = Double.NaN;
            return value;
        }
        double u;
        double v;
        double s;
        do {
            u = 2 * random.nextDouble() - 1;
            v = 2 * random.nextDouble() - 1;
            s = u * u + v * v;
        } while (s >= 1 || s == 0);
        double factor = Math.sqrt(-2 * Math.log(s) / s);
        spare = v * factor;
        return u * factor;
    }

    public double poisson(double mean) {
        if (mean > 60) {
            return Math.max(0, Math.rint(mean + Math.sqrt(mean) * normal()));
        }
        double limit = Math.exp(-mean);
        double product = random.nextDouble();
        int count = 0;
        while (product > limit) {
            product *= random.nextDouble();
            count++;
        }
        return count;
    }
}
