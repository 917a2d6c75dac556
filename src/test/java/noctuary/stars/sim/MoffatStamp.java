package noctuary.stars.sim;

/**
 * Light of an elliptical Moffat profile (Moffat 1969, A&amp;A 3, 455) in whole pixels, by Gauss-Legendre points of
 * order 12 in the core and fewer outside. Written apart from the measured code, as its slow twin.
 */
final class MoffatStamp {
    private static final double[][] NODES = new double[13][];
    private static final double[][] WEIGHTS = new double[13][];

    static {
        for (int n = 1; n <= 12; n++) {
            legendre(n);
        }
    }

    private final double beta;
    private final double peak;
    private final double xx;
    private final double xy;
    private final double yy;
    private final double alpha;
    private final double minor;

    MoffatStamp(double fwhmPx, double ellipticity, double angleDeg, double beta) {
        this.beta = beta;
        double q = 1 - ellipticity;
        alpha = fwhmPx / (2 * Math.sqrt(Math.pow(2, 1 / beta) - 1));
        double a2 = alpha * alpha / q;
        double b2 = alpha * alpha * q;
        double c = Math.cos(Math.toRadians(angleDeg));
        double s = Math.sin(Math.toRadians(angleDeg));
        xx = c * c / a2 + s * s / b2;
        yy = s * s / a2 + c * c / b2;
        xy = c * s * (1 / a2 - 1 / b2);
        peak = (beta - 1) / (Math.PI * alpha * alpha);
        minor = Math.sqrt(b2);
    }

    /** Share of the flux in the pixel whose centre lies (dx, dy) from the star. */
    double share(double dx, double dy) {
        int n = order(Math.hypot(dx, dy));
        double sum = 0;
        for (int j = 0; j < n; j++) {
            double v = dy + NODES[n][j];
            for (int i = 0; i < n; i++) {
                double u = dx + NODES[n][i];
                double r2 = xx * u * u + 2 * xy * u * v + yy * v * v;
                sum += WEIGHTS[n][i] * WEIGHTS[n][j] * Math.pow(1 + r2, -beta);
            }
        }
        return peak * sum;
    }

    /** Distance beyond which a pixel holds less than the share {@code least}. */
    double reach(double least) {
        double r = alpha * Math.sqrt(Math.max(0, Math.pow(least / peak, -1 / beta) - 1));
        return r * alpha / minor + 2;
    }

    private int order(double r) {
        if (r < 1.5 * alpha + 1) {
            return minor < 1.5 ? 12 : 6;
        }
        if (r < 5 * alpha + 1) {
            return minor < 1.5 ? 6 : 3;
        }
        return r < Math.max(20, 10 * alpha) ? 2 : 1;
    }

    private static void legendre(int n) {
        NODES[n] = new double[n];
        WEIGHTS[n] = new double[n];
        for (int i = 0; i < n; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 1;
            for (int pass = 0; pass < 60; pass++) {
                double before = 1;
                double now = x;
                for (int k = 2; k <= n; k++) {
                    double next = ((2 * k - 1) * x * now - (k - 1) * before) / k;
                    before = now;
                    now = next;
                }
                slope = n == 1 ? 1 : n * (x * now - before) / (x * x - 1);
                x -= now / slope;
            }
            NODES[n][i] = x / 2;
            WEIGHTS[n][i] = 1 / ((1 - x * x) * slope * slope);
        }
    }
}
