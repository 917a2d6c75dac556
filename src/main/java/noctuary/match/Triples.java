package noctuary.match;

import java.util.Arrays;

/** Sets of three ranks, each packed in one number with the ranks ascending. */
final class Triples {
    private static final int BITS = 20;
    private static final long MASK = (1L << BITS) - 1;

    private long[] packed = new long[4096];
    private int size;

    /** Every triangle of a star among the first {@code count} and two of its nearest there. */
    void addNeighbours(Points points, int count, int neighbours) {
        int wanted = Math.min(neighbours, count - 1);
        int[] nearest = new int[wanted];
        for (int star = 0; star < count; star++) {
            nearest(points, count, star, nearest);
            for (int i = 0; i < wanted; i++) {
                for (int j = i + 1; j < wanted; j++) {
                    add(star, nearest[i], nearest[j]);
                }
            }
        }
    }

    /** Each triple once, ascending. */
    long[] distinct() {
        return Arrays.stream(packed, 0, size).sorted().distinct().toArray();
    }

    static int first(long triple) {
        return (int) (triple >> 2 * BITS);
    }

    static int second(long triple) {
        return (int) (triple >> BITS & MASK);
    }

    static int third(long triple) {
        return (int) (triple & MASK);
    }

    private void add(int i, int j, int k) {
        if (size == packed.length) {
            packed = Arrays.copyOf(packed, 2 * size);
        }
        long low = Math.min(i, Math.min(j, k));
        long high = Math.max(i, Math.max(j, k));
        packed[size++] = low << 2 * BITS | (i + j + k - low - high) << BITS | high;
    }

    /** Fills {@code nearest} with the ranks nearest to one star, by insertion. */
    private static void nearest(Points p, int count, int star, int[] nearest) {
        double[] distances = new double[nearest.length];
        int found = 0;
        for (int other = 0; other < count; other++) {
            double dx = p.x[other] - p.x[star];
            double dy = p.y[other] - p.y[star];
            double distance = dx * dx + dy * dy;
            if (other == star || found == nearest.length && distance >= distances[found - 1]) {
                continue;
            }
            int place = found < nearest.length ? found++ : found - 1;
            while (place > 0 && distances[place - 1] > distance) {
                distances[place] = distances[place - 1];
                nearest[place] = nearest[place - 1];
                place--;
            }
            distances[place] = distance;
            nearest[place] = other;
        }
    }
}
