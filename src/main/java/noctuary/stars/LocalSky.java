package noctuary.stars;

/**
 * The sky under a star where it has structure: a quadratic surface fitted to what the star's profile leaves of the
 * stamp, each pixel by its variance. On a stamp of half again the usual radius the bends of the sky hardly pass for width:
 * the Cramér-Rao bound of the width rises by a few per cent, that of the usual stamp by a quarter.
 */
final class LocalSky {
    private static final int TERMS = 6;
    /** Brings the terms to one size. */
    private static final double UNIT_PX = 10;

    private LocalSky() {}

    /**
     * The stamp without its sky.
     *
     * @param star without background
     * @param photonSlope variance that one ADU of starlight adds, ADU
     */
    static Stamp off(Stamp stamp, MoffatModel star, double photonSlope) {
        double[] matrix = new double[TERMS * TERMS];
        double[] right = new double[TERMS];
        double[] term = new double[TERMS];
        for (int i = 0; i < stamp.n(); i++) {
            double light = star.value(stamp.dx()[i], stamp.dy()[i]);
            double weight = 1 / (stamp.variance() + photonSlope * Math.max(0, light));
            fill(stamp, i, term);
            for (int a = 0; a < TERMS; a++) {
                right[a] += weight * term[a] * (stamp.value()[i] - light);
                for (int b = 0; b < TERMS; b++) {
                    matrix[a * TERMS + b] += weight * term[a] * term[b];
                }
            }
        }
        if (!Cholesky.factor(matrix, TERMS)) {
            return stamp;
        }
        Cholesky.solve(matrix, TERMS, right);
        return stamp.with(less(stamp, right, term));
    }

    private static double[] less(Stamp stamp, double[] coefficient, double[] term) {
        double[] value = stamp.value().clone();
        for (int i = 0; i < stamp.n(); i++) {
            fill(stamp, i, term);
            for (int a = 0; a < TERMS; a++) {
                value[i] -= coefficient[a] * term[a];
            }
        }
        return value;
    }

    private static void fill(Stamp stamp, int i, double[] term) {
        double x = stamp.dx()[i] / UNIT_PX;
        double y = stamp.dy()[i] / UNIT_PX;
        term[0] = 1;
        term[1] = x;
        term[2] = y;
        term[3] = x * x;
        term[4] = x * y;
        term[5] = y * y;
    }
}
