package noctuary.image;

/**
 * A straight map of positions: u = xx x + xy y + x0, v = yx x + yy y + y0; pixels as the package counts them.
 */
public record Affine(double xx, double xy, double x0, double yx, double yy, double y0) {
    public static final Affine SAME = new Affine(1, 0, 0, 0, 1, 0);

    public static Affine shift(double x, double y) {
        return new Affine(1, 0, x, 0, 1, y);
    }

    /** From pixels of a copy reduced by {@code factor} to those of the original: edges meet, not centres. */
    public static Affine enlarged(double factor) {
        double half = (factor - 1) / 2;
        return new Affine(factor, 0, half, 0, factor, half);
    }

    public double x(double x, double y) {
        return xx * x + xy * y + x0;
    }

    public double y(double x, double y) {
        return yx * x + yy * y + y0;
    }

    /** How many units of area one becomes. */
    public double area() {
        return Math.abs(xx * yy - xy * yx);
    }

    /** First {@code first}, then this. */
    public Affine after(Affine first) {
        return new Affine(
                xx * first.xx + xy * first.yx,
                xx * first.xy + xy * first.yy,
                x(first.x0, first.y0),
                yx * first.xx + yy * first.yx,
                yx * first.xy + yy * first.yy,
                y(first.x0, first.y0));
    }

    /** @throws IllegalArgumentException when the map has no way back */
    public Affine inverse() {
        double det = xx * yy - xy * yx;
        if (!(Math.abs(det) > 0) || Double.isInfinite(det)) {
            throw new IllegalArgumentException("a map of determinant " + det + " has no inverse");
        }
        return new Affine(
                yy / det, -xy / det, (xy * y0 - yy * x0) / det, -yx / det, xx / det, (yx * x0 - xx * y0) / det);
    }
}
