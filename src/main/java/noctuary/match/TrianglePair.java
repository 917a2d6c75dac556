package noctuary.match;

/** Two triangles alike, corner by corner. */
final class TrianglePair {
    private static final double[] EVEN = {1, 1, 1};

    private TrianglePair() {}

    static Similarity transform(Points a, Triangles ofA, int i, Points b, Triangles ofB, int j, boolean mirrored) {
        double[] x = new double[3];
        double[] y = new double[3];
        double[] u = new double[3];
        double[] v = new double[3];
        for (int corner = 0; corner < 3; corner++) {
            int from = ofA.corners[3 * i + corner];
            int to = ofB.corners[3 * j + corner];
            x[corner] = a.x[from];
            y[corner] = a.y[from];
            u[corner] = b.x[to];
            v[corner] = b.y[to];
        }
        return Similarity.fit(x, y, u, v, EVEN, 3, mirrored);
    }
}
