package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import noctuary.image.Asinh;

/**
 * The stretch from the origin's values to shares of white: a curve, bent by a table where it needs it. Never falls;
 * ends at white, and, as a picture shows it, at black.
 */
final class Transfer {
    private static final int KNOTS = 4096;

    private final Curve curve;
    private final boolean bent;
    private final double first;
    private final double step;
    private final double[] from = new double[KNOTS];
    private final double[] to = new double[KNOTS];

    /**
     * @param low lowest value of the origin
     * @param high highest
     * @param bends what is added to the curve
     * @param bent whether the curve alone would not do
     */
    Transfer(Curve curve, Bends bends, boolean bent, double low, double high) {
        this.curve = curve;
        this.bent = bent;
        this.first = Asinh.asinh((low - curve.middle()) / curve.softness());
        double last = Asinh.asinh((high - curve.middle()) / curve.softness());
        this.step = Math.max(1e-12, (last - first) / (KNOTS - 1));
        for (int k = 0; k < KNOTS; k++) {
            from[k] = curve.middle() + curve.softness() * Math.sinh(first + k * step);
            double value = Math.min(1, curve.at(from[k]) + bends.at(from[k]));
            to[k] = k == 0 ? value : Math.max(to[k - 1], value);
        }
    }

    /** Over all that the tiles hold, and as far as black and white. */
    static Transfer over(List<Tile> tiles, Curve curve, Bends bends, boolean bent) {
        float low = Float.POSITIVE_INFINITY;
        float high = Float.NEGATIVE_INFINITY;
        for (Tile tile : tiles) {
            for (float value : tile.origin()) {
                low = value < low ? value : low;
                high = value > high ? value : high;
            }
        }
        double top = Math.min(Math.max(high, curve.reaches(1)), 1e6 * Math.max(1, Math.abs(high)));
        return new Transfer(curve, bends, bent, Math.min(low, curve.reaches(0)), top);
    }

    Curve curve() {
        return curve;
    }

    /** Whether the curve alone would not do. */
    boolean bent() {
        return bent;
    }

    /** The share of white that a value of the origin becomes; NaN for NaN. */
    double forward(double value) {
        double endless = endless(value);
        return endless < 0 ? 0 : endless;
    }

    /** As {@link #forward}, below zero for what the picture cuts to black. */
    double endless(double value) {
        double place = (Asinh.asinh((value - curve.middle()) / curve.softness()) - first) / step;
        if (!(place > 0)) {
            return Double.isNaN(place) ? Double.NaN : to[0];
        }
        int k = (int) place;
        return k >= KNOTS - 1 ? to[KNOTS - 1] : to[k] + (place - k) * (to[k + 1] - to[k]);
    }

    /** Mean slope from {@code within} below a value to {@code within} above it. */
    double slope(double value, double within) {
        return (endless(value + within) - endless(value - within)) / (2 * within);
    }

    float[] forward(float[] values) {
        return each(values, this::forward);
    }

    float[] endless(float[] values) {
        return each(values, this::endless);
    }

    private static float[] each(float[] values, DoubleUnaryOperator of) {
        float[] out = new float[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) of.applyAsDouble(values[i]);
        }
        return out;
    }

    /** The origin's value that becomes {@code share}; at both ends the one nearest to the middle of the range. */
    double back(double share) {
        int at = Arrays.binarySearch(to, share);
        if (at >= 0) {
            return from[at];
        }
        int above = -at - 1;
        if (above == 0 || above == KNOTS) {
            return from[above == 0 ? 0 : KNOTS - 1];
        }
        double part = (share - to[above - 1]) / (to[above] - to[above - 1]);
        return from[above - 1] + part * (from[above] - from[above - 1]);
    }
}
