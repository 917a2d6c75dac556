package noctuary.stars;

/**
 * The surface of squared widths over a field of the given height over width, read as widths; errors follow by the
 * slopes of each figure.
 *
 * @param sharedError relative error that all widths have in common
 */
record Widths(Surface square, double aspect, double sharedError) {
    private static final double LEAST_ERRORS = 2;

    /** A figure with its standard error. */
    private record Figure(double value, double error) {
        static final Figure NONE = new Figure(Double.NaN, Double.NaN);
    }

    FieldModel model(int stars) {
        boolean bent = square.terms() == FieldBasis.BENT;
        Figure centre = bent ? centre() : Figure.NONE;
        Figure corners = bent ? cornerExcess() : Figure.NONE;
        Figure curvature = bent ? curvature() : Figure.NONE;
        double middle = Math.sqrt(Math.max(1e-12, square.coefficient()[0]));
        double toX = Math.hypot(1, aspect) / middle;
        double toY = toX / aspect;
        double x = toX * square.coefficient()[1];
        double y = toY * square.coefficient()[2];
        Figure tilt = tilt(x, y, toX, toY);
        boolean clear = tilt.value > LEAST_ERRORS * tilt.error;
        return new FieldModel(
                stars,
                centre.value,
                centre.error,
                corners.value,
                corners.error,
                tilt.value,
                tilt.error,
                clear ? Math.toDegrees(Math.atan2(y, x)) : Double.NaN,
                curvature.value,
                curvature.error,
                Math.sqrt(square.ownVariance()) / (2 * middle));
    }

    private Figure centre() {
        double value = root(at(0, 0));
        return new Figure(
                value,
                Math.hypot(
                        error(plus(at(0, 0), 1 / (2 * value), new double[FieldBasis.BENT], 0)), sharedError * value));
    }

    private Figure cornerExcess() {
        double[] middle = at(0, 0);
        double value = 0;
        double[] slope = new double[FieldBasis.BENT];
        for (int corner = 0; corner < 4; corner++) {
            double[] there = at(corner % 2 * 2 - 1, corner / 2 * 2 - 1);
            value += (root(there) - root(middle)) / 4;
            slope = plus(there, 1 / (8 * root(there)), slope, 1);
        }
        return new Figure(value, error(plus(middle, -1 / (2 * root(middle)), slope, 1)));
    }

    /** Rise to a corner of the part that is alike in all directions. */
    private Figure curvature() {
        double flat = aspect * aspect;
        double[] corner = {1, 0, 0, (1 + flat) / 2, 0, (1 + 1 / flat) / 2, 1};
        double[] middle = at(0, 0);
        double[] slope = plus(corner, 1 / (2 * root(corner)), middle, -1 / (2 * root(middle)));
        return new Figure(root(corner) - root(middle), error(slope));
    }

    /** Noise across the tilt always adds to its length, by its variance to the square; that is taken off. */
    private Figure tilt(double x, double y, double toX, double toY) {
        double length = Math.max(1e-12, Math.hypot(x, y));
        double along = error(new double[] {0, toX * x / length, toY * y / length, 0, 0, 0, 0});
        double across = error(new double[] {0, -toX * y / length, toY * x / length, 0, 0, 0, 0});
        return new Figure(Math.sqrt(Math.max(0, length * length - across * across)), along);
    }

    private static double[] at(double x, double y) {
        double r4 = x == 0 && y == 0 ? 0 : 1;
        return new double[] {1, x, y, x * x, x * y, y * y, r4};
    }

    private double root(double[] combination) {
        return Math.sqrt(Math.max(1e-12, square.combined(combination)));
    }

    private double error(double[] combination) {
        return Math.sqrt(square.varianceOf(combination));
    }

    private static double[] plus(double[] a, double shareA, double[] b, double shareB) {
        double[] sum = new double[a.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = shareA * a[i] + shareB * b[i];
        }
        return sum;
    }
}
