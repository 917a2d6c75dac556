package noctuary.stats;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Gamma;

/** Student's distribution when there is a true shift. */
final class NoncentralT {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Simpson's steps for small t; even. The integrand bends on the scale 1 / t too. */
    private static final int STEPS = 400;

    /** Standard deviations of the integrand's hump that are integrated to both sides. */
    private static final double REACH = 9;

    private NoncentralT() {}

    /**
     * P(T ≤ t) with {@code df} degrees of freedom and noncentrality {@code delta}: ∫ Φ(t s - delta) f(s) ds, f the
     * density of √(χ²/df), by Simpson's rule (definition in Johnson, Kotz &amp; Balakrishnan 1995, chapter 31). Absolute
     * error below 1e-7.
     */
    static double below(double t, double df, double delta) {
        double spread = REACH / Math.sqrt(2 * df);
        double from = Math.max(0, 1 - spread);
        int steps = STEPS + 2 * (int) (STEPS / 20.0 * Math.abs(t));
        double step = (1 + spread - from) / steps;
        double constant = Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double s = from + i * step;
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            double density = s == 0
                    ? (df == 1 ? Math.exp(constant) : 0)
                    : Math.exp(constant + (df - 1) * Math.log(s) - df * s * s / 2);
            sum += weight * density * NORMAL.cumulativeProbability(t * s - delta);
        }
        return sum * step / 3;
    }
}
