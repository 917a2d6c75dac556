package noctuary.effect;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.ToDoubleBiFunction;

/** Where a function of two numbers is lowest, by the triangle search of Nelder and Mead 1965 (Computer J. 7, 308). */
final class Simplex {
    private static final int MOST_STEPS = 60;
    private static final double NEAR = 1e-5;

    private Simplex() {}

    /** A corner: both numbers and the function's value. */
    record Corner(double x, double y, double value) {}

    static Corner lowest(double x, double y, double stepX, double stepY, ToDoubleBiFunction<Double, Double> of) {
        Corner[] corners = {at(x, y, of), at(x + stepX, y, of), at(x, y + stepY, of)};
        Comparator<Corner> byValue = Comparator.comparingDouble(Corner::value);
        for (int step = 0; step < MOST_STEPS; step++) {
            Arrays.sort(corners, byValue);
            if (corners[2].value() - corners[0].value() < NEAR * Math.abs(corners[0].value())) {
                break;
            }
            Corner next = next(corners, of);
            if (next.value() < corners[2].value()) {
                corners[2] = next;
            } else {
                corners[1] = between(corners[0], corners[1], 0.5, of);
                corners[2] = between(corners[0], corners[2], 0.5, of);
            }
        }
        Arrays.sort(corners, byValue);
        return corners[0];
    }

    /** The worst corner mirrored at the middle of the others, or farther, or drawn in. */
    private static Corner next(Corner[] corners, ToDoubleBiFunction<Double, Double> of) {
        Corner middle = new Corner((corners[0].x() + corners[1].x()) / 2, (corners[0].y() + corners[1].y()) / 2, 0);
        Corner mirrored = between(middle, corners[2], -1, of);
        if (mirrored.value() < corners[0].value()) {
            Corner farther = between(middle, corners[2], -2, of);
            return farther.value() < mirrored.value() ? farther : mirrored;
        }
        return mirrored.value() < corners[1].value() ? mirrored : between(middle, corners[2], 0.5, of);
    }

    private static Corner between(Corner from, Corner to, double part, ToDoubleBiFunction<Double, Double> of) {
        return at(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()), of);
    }

    private static Corner at(double x, double y, ToDoubleBiFunction<Double, Double> of) {
        double value = of.applyAsDouble(x, y);
        return new Corner(x, y, Double.isNaN(value) ? Double.POSITIVE_INFINITY : value);
    }
}
