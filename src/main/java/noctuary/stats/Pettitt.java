package noctuary.stats;

/**
 * A step in a series, by ranks (Pettitt 1979, Applied Statistics 28, 126): K = max over k of |Σ_{i ≤ k < j} sign(x_i -
 * x_j)|.
 *
 * @param after how many values stand before the step
 * @param k the statistic
 * @param p approximate, 2 exp(-6 K² / (n³ + n²)), at most 1
 */
public record Pettitt(int after, double k, double p) {
    /** @throws IllegalArgumentException for fewer than two values */
    public static Pettitt of(double[] series) {
        int n = series.length;
        if (n < 2) {
            throw new IllegalArgumentException("a step needs two values");
        }
        double running = 0;
        double most = -1;
        int best = 1;
        for (int k = 1; k < n; k++) {
            for (double other : series) {
                running += Math.signum(series[k - 1] - other);
            }
            if (Math.abs(running) > most) {
                most = Math.abs(running);
                best = k;
            }
        }
        double p = 2 * Math.exp(-6 * most * most / ((double) n * n * n + (double) n * n));
        return new Pettitt(best, most, Math.min(1, p));
    }
}
