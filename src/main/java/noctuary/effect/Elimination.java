package noctuary.effect;

/** Gauss elimination of a system that is positive definite: no row needs to change its place. */
final class Elimination {
    private Elimination() {}

    /** @param m rows of coefficients with the right side last; overwritten */
    static double[] solve(double[][] m) {
        int n = m.length;
        for (int p = 0; p < n; p++) {
            for (int r = p + 1; r < n; r++) {
                double f = m[r][p] / m[p][p];
                for (int c = p; c <= n; c++) {
                    m[r][c] -= f * m[p][c];
                }
            }
        }
        double[] x = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double sum = m[r][n];
            for (int c = r + 1; c < n; c++) {
                sum -= m[r][c] * x[c];
            }
            x[r] = sum / m[r][r];
        }
        return x;
    }
}
