package noctuary.effect;

import java.util.function.DoubleUnaryOperator;

/** Where a function of one number is lowest, by golden section. */
final class Lowest {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int MOST_STEPS = 22;
    private static final double NEAR = 1e-4;

    private Lowest() {}

    static double between(double from, double to, DoubleUnaryOperator of) {
        double low = from;
        double high = to;
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = of.applyAsDouble(a);
        double atB = of.applyAsDouble(b);
        for (int i = 0; i < MOST_STEPS && high - low > NEAR * Math.abs(low + high); i++) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = of.applyAsDouble(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = of.applyAsDouble(b);
            }
        }
        return (low + high) / 2;
    }
}
