package noctuary.noise;

/** A small weighted linear least-squares problem, gathered point by point. */
final class NormalEquations {
    private final int terms;
    private final double[][] matrix;

    NormalEquations(int terms) {
        this.terms = terms;
        this.matrix = new double[terms][terms + 1];
    }

    void add(double[] basis, double value, double weight) {
        for (int i = 0; i < terms; i++) {
            for (int j = 0; j < terms; j++) {
                matrix[i][j] += weight * basis[i] * basis[j];
            }
            matrix[i][terms] += weight * basis[i] * value;
        }
    }

    /** The coefficients; zero for a term that the points do not fix. */
    double[] solve() {
        boolean[] fixed = new boolean[terms];
        for (int i = 0; i < terms; i++) {
            fixed[i] = eliminate(i);
        }
        double[] solution = new double[terms];
        for (int i = 0; i < terms; i++) {
            solution[i] = fixed[i] ? matrix[i][terms] / matrix[i][i] : 0;
        }
        return solution;
    }

    /** Gauss and Jordan, without exchange: the matrix is symmetric and not negative. */
    private boolean eliminate(int pivot) {
        if (!(matrix[pivot][pivot] > 1e-12)) {
            return false;
        }
        for (int row = 0; row < terms; row++) {
            double factor = row == pivot ? 0 : matrix[row][pivot] / matrix[pivot][pivot];
            for (int j = pivot; j <= terms && factor != 0; j++) {
                matrix[row][j] -= factor * matrix[pivot][j];
            }
        }
        return true;
    }
}
