package noctuary.advice;

/** Quantiles of Student's t at one level. */
final class StudentT {
    /** 0.995 quantile of the normal distribution. */
    private static final double Z = 2.5758293035489004;

    private StudentT() {}

    /**
     * The 0.995 quantile for {@code freedom} degrees, five or more: Abramowitz &amp; Stegun 26.7.5, five terms, 0.6 % off
     * at five degrees and better beyond.
     */
    static double upper(int freedom) {
        double z2 = Z * Z;
        double n = freedom;
        double g1 = Z * (z2 + 1) / 4;
        double g2 = Z * ((5 * z2 + 16) * z2 + 3) / 96;
        double g3 = Z * (((3 * z2 + 19) * z2 + 17) * z2 - 15) / 384;
        double g4 = Z * ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945) / 92160;
        return Z + g1 / n + g2 / (n * n) + g3 / Math.pow(n, 3) + g4 / Math.pow(n, 4);
    }
}
