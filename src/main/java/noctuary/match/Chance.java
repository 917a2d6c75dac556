package noctuary.match;

/** How many transforms that good chance alone would offer. */
final class Chance {
    /** Fewer matched stars never count. */
    static final int FEWEST_STARS = 6;
    /** Logarithm of the expected number of accidents below which a transform stands. */
    static final double LIMIT = -6;

    private Chance() {}

    /** Pairs that fall together by accident: N₁ N₂ π t² / A. */
    static double pairs(int first, int second, double reach, double area) {
        return first * (double) second * Math.PI * reach * reach / area;
    }

    /**
     * Common logarithm of the expected number of transforms, among all that two stars of each list propose, straight
     * and mirrored, under which that many stars meet by accident. Two of them always meet, by construction.
     */
    static double log10Accidents(int matched, double expectedPairs, int first, int second) {
        double transforms = 2.0 * first * (first - 1.0) * second * (second - 1.0);
        return Math.log10(transforms) + log10PoissonTail(matched - 2, expectedPairs);
    }

    /** log₁₀ P(X ≥ k), X Poisson with that mean; an upper bound, close for k well above the mean. */
    static double log10PoissonTail(int k, double mean) {
        if (k <= mean) {
            return 0;
        }
        double logFactorial = 0;
        for (int i = 2; i <= k; i++) {
            logFactorial += Math.log(i);
        }
        double log = k * Math.log(mean) - mean - logFactorial - Math.log1p(-mean / (k + 1));
        return Math.min(0, log / Math.log(10));
    }
}
