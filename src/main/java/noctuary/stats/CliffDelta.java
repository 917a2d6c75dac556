package noctuary.stats;

/** How far two samples lie apart (Cliff 1993, Psychological Bulletin 114, 494). */
public final class CliffDelta {
    private CliffDelta() {}

    /** Mean of sign(x - y) over all pairs, -1 to 1: the chance that x exceeds y minus the chance that it falls short. */
    public static double of(double[] x, double[] y) {
        double sum = 0;
        for (double a : x) {
            for (double b : y) {
                sum += Math.signum(a - b);
            }
        }
        return sum / (x.length * y.length);
    }
}
