package noctuary.stars;

/** Range of the sky over the field, from a quadratic surface through the mesh, as a share of the level. */
final class GradientPercent {
    private static final int STEPS = 8;

    private GradientPercent() {}

    static double of(BackgroundMesh mesh) {
        double level = mesh.level();
        int n = mesh.columns() * mesh.rows();
        if (!(level > 0)) {
            return Double.NaN;
        }
        double[] x = new double[n];
        double[] y = new double[n];
        double[] value = new double[n];
        double[] error = new double[n];
        for (int i = 0; i < n; i++) {
            int column = i % mesh.columns();
            int row = i / mesh.columns();
            x[i] = 2 * (column + 0.5) / mesh.columns() - 1;
            y[i] = 2 * (row + 0.5) / mesh.rows() - 1;
            value[i] = mesh.cellLevel(column, row);
            error[i] = Math.max(1e-6 * level, 0.05 * mesh.noise());
        }
        Surface surface = Surface.fit(x, y, value, error, termsFor(mesh));
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int j = 0; j <= STEPS; j++) {
            for (int i = 0; i <= STEPS; i++) {
                double v = surface.at(2.0 * i / STEPS - 1, 2.0 * j / STEPS - 1);
                least = Math.min(least, v);
                most = Math.max(most, v);
            }
        }
        return 100 * (most - least) / level;
    }

    private static int termsFor(BackgroundMesh mesh) {
        int fewest = Math.min(mesh.columns(), mesh.rows());
        return fewest >= 4 ? 6 : fewest >= 2 ? 3 : 1;
    }
}
