package noctuary.draw;

import java.util.List;
import java.util.stream.LongStream;

/**
 * Round values along an axis, a step of 1, 2 or 5 times a power of ten apart.
 *
 * @param decimals that tell neighbours apart
 */
record Ticks(List<Double> values, int decimals) {
    private static final double[] ROUND = {1, 2, 5};

    Ticks {
        values = List.copyOf(values);
    }

    /**
     * Ticks whose first and last enclose the range, at most {@code most} (2 or more) of them, as close as that allows.
     */
    static Ticks around(double low, double high, int most) {
        double margin = low == high ? low == 0 ? 1 : Math.abs(low) * 0.1 : 0;
        double from = low - margin;
        double to = high + margin;
        for (int power = powerBelow((to - from) / most); ; power++) {
            for (double round : ROUND) {
                long first = (long) Math.floor(quotient(from, round, power) + 1e-9);
                long last = (long) Math.ceil(quotient(to, round, power) - 1e-9);
                if (last - first + 1 <= most) {
                    return of(first, Math.max(last, first + 1), round, power);
                }
            }
        }
    }

    /** Ticks from zero up to enclose {@code high}; from 0 to 1 when nothing is above zero. */
    static Ticks fromZero(double high, int most) {
        return around(0, high > 0 ? high : 1, most);
    }

    private static Ticks of(long first, long last, double round, int power) {
        List<Double> values = LongStream.rangeClosed(first, last)
                .mapToObj(k -> product(k * round, power))
                .toList();
        return new Ticks(values, Math.max(0, -power));
    }

    private static int powerBelow(double step) {
        return (int) Math.floor(Math.log10(step)) - 1;
    }

    private static double quotient(double value, double round, int power) {
        return product(value, -power) / round;
    }

    private static double product(double value, int power) {
        return power < 0 ? value / Math.pow(10, -power) : value * Math.pow(10, power);
    }

    double low() {
        return values.get(0);
    }

    double high() {
        return values.get(values.size() - 1);
    }

    /** Room for the widest label. */
    double width(double fontSize) {
        return values.stream()
                .mapToDouble(value -> Words.width(label(value), fontSize))
                .max()
                .orElseThrow();
    }

    String label(double value) {
        return Digits.fixed(value, decimals);
    }
}
