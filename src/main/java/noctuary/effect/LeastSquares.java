package noctuary.effect;

/** The sums of a fit that is linear in its terms, all points alike. */
final class LeastSquares {
    private final double[][] sums;

    LeastSquares(int terms) {
        this.sums = new double[terms][terms + 1];
    }

    void add(double[] terms, double value) {
        for (int a = 0; a < terms.length; a++) {
            for (int b = 0; b < terms.length; b++) {
                sums[a][b] += terms[a] * terms[b];
            }
            sums[a][terms.length] += terms[a] * value;
        }
    }

    /** How much of each term; to be asked for once. */
    double[] solve() {
        return Elimination.solve(sums);
    }
}
