package noctuary.effect;

/** The plane through the free pixels of a block, by least squares: level at its middle, and rise a pixel along x and y. */
record Slant(double level, double perX, double perY) {
    private static final double MIDDLE = (Block.SIDE - 1) / 2.0;

    /** @param values of the block's pixels, row after row; those that are not free are passed over */
    static Slant of(double[] values, boolean[] free) {
        double[][] m = new double[3][4];
        for (int y = 0; y < Block.SIDE; y++) {
            addRow(m, values, free, y);
        }
        m[1][0] = m[0][1];
        m[2][0] = m[0][2];
        m[2][1] = m[1][2];
        double[] plane = Elimination.solve(m);
        return new Slant(plane[0], plane[1], plane[2]);
    }

    /** Adds to the upper half of the normal equations of 1, x, y. */
    private static void addRow(double[][] m, double[] values, boolean[] free, int row) {
        double y = row - MIDDLE;
        double n = 0;
        double sumX = 0;
        double sumXx = 0;
        double sum = 0;
        double sumX1 = 0;
        for (int column = 0; column < Block.SIDE; column++) {
            int i = row * Block.SIDE + column;
            if (free[i]) {
                double x = column - MIDDLE;
                n++;
                sumX += x;
                sumXx += x * x;
                sum += values[i];
                sumX1 += x * values[i];
            }
        }
        m[0][0] += n;
        m[0][1] += sumX;
        m[0][2] += n * y;
        m[0][3] += sum;
        m[1][1] += sumXx;
        m[1][2] += sumX * y;
        m[1][3] += sumX1;
        m[2][2] += n * y * y;
        m[2][3] += sum * y;
    }

    /** In pixels of the block; outside of it too. */
    double at(int x, int y) {
        return level + perX * (x - MIDDLE) + perY * (y - MIDDLE);
    }
}
