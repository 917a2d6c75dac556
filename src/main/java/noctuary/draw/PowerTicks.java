package noctuary.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Round values along an axis that counts powers: 1, 2 and 5 times powers of ten, powers alone over a wide range, even
 * steps over a short one.
 */
final class PowerTicks {
    private static final int MOST = 7;
    private static final double SHORT = 3;
    private static final double[] ROUND = {1, 2, 5};

    private PowerTicks() {}

    /** Ticks whose first and last enclose the range, which lies above zero. */
    static Ticks around(double low, double high) {
        Ticks even = Ticks.around(low, high, MOST);
        if (high < SHORT * low && even.low() > 0) {
            return even;
        }
        int first = atMost(low);
        int step = 1;
        if (atMost(high) - first >= MOST - 1) {
            first = Math.floorDiv(first, 3) * 3;
            step = 3 * Math.max(1, (int) Math.ceil((atMost(high) - first) / (3.0 * (MOST - 2))));
        }
        List<Double> values = new ArrayList<>(List.of(value(first)));
        for (int k = first + step; values.get(values.size() - 1) < high * (1 - 1e-9); k += step) {
            values.add(value(k));
        }
        return new Ticks(values, Math.max(0, -Math.floorDiv(first, 3)));
    }

    /** Rank of the largest round value that is not above. */
    private static int atMost(double value) {
        int rank = 3 * (int) Math.floor(Math.log10(value)) - 1;
        while (value(rank + 1) <= value * (1 + 1e-9)) {
            rank++;
        }
        return rank;
    }

    private static double value(int rank) {
        int power = Math.floorDiv(rank, 3);
        double round = ROUND[Math.floorMod(rank, 3)];
        return power < 0 ? round / Math.pow(10, -power) : round * Math.pow(10, power);
    }
}
