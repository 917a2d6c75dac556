package noctuary.stars;

/** Small symmetric positive definite systems, stored as full n x n rows. */
final class Cholesky {
    private Cholesky() {}

    /** Factors {@code a} in place into its lower triangle; false when it is not positive definite. */
    static boolean factor(double[] a, int n) {
        for (int j = 0; j < n; j++) {
            double diagonal = a[j * n + j];
            for (int k = 0; k < j; k++) {
                diagonal -= a[j * n + k] * a[j * n + k];
            }
            if (!(diagonal > 0)) {
                return false;
            }
            double root = Math.sqrt(diagonal);
            a[j * n + j] = root;
            for (int i = j + 1; i < n; i++) {
                double sum = a[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= a[i * n + k] * a[j * n + k];
                }
                a[i * n + j] = sum / root;
            }
        }
        return true;
    }

    /** Solves with a factor from {@link #factor}; the answer replaces {@code b}. */
    static void solve(double[] factor, int n, double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[i * n + k] * b[k];
            }
            b[i] = sum / factor[i * n + i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int k = i + 1; k < n; k++) {
                sum -= factor[k * n + i] * b[k];
            }
            b[i] = sum / factor[i * n + i];
        }
    }

    /** Column {@code j} of the inverse. */
    static double[] inverseColumn(double[] factor, int n, int j) {
        double[] unit = new double[n];
        unit[j] = 1;
        solve(factor, n, unit);
        return unit;
    }
}
