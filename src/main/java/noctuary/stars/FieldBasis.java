package noctuary.stars;

import java.util.Arrays;

/**
 * The terms in which widths are described over a field, in coordinates that run from -1 to 1 over each axis: 1, x, y,
 * x², xy, y², and the fourth power of the distance from the middle (1 in a corner), as which the faults of a corrector
 * grow.
 */
record FieldBasis(int width, int height) {
    static final int LINEAR = 3;
    static final int BENT = 7;
    private static final int FOR_BENT = 30;
    private static final int FOR_LINEAR = 10;

    /** Terms that so many points carry. */
    static int termsFor(int points) {
        return points >= FOR_BENT ? BENT : points >= FOR_LINEAR ? LINEAR : 1;
    }

    double[] at(double px, double py, int terms) {
        double x = 2 * (px + 0.5) / width - 1;
        double y = 2 * (py + 0.5) / height - 1;
        double flat = aspect() * aspect();
        double r2 = (x * x + flat * y * y) / (1 + flat);
        return Arrays.copyOf(new double[] {1, x, y, x * x, x * y, y * y, r2 * r2}, terms);
    }

    double aspect() {
        return (double) height / width;
    }
}
