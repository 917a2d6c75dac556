package noctuary.match;

import java.util.Arrays;

/** Which point of one list lies on which of another under a transform: nearest within a reach, each point once. */
final class Pairing {
    /** Median of a Rayleigh distribution with σ = 1: √(2 ln 2). */
    private static final double RAYLEIGH_MEDIAN = Math.sqrt(2 * Math.log(2));

    private final Points a;
    private final Points b;
    private final NearestGrid grid;
    private final int[] fromRank;
    private final int[] toRank;
    private final double[] distance;
    private int size;

    Pairing(Points a, Points b) {
        this.a = a;
        this.b = b;
        grid = new NearestGrid(b);
        fromRank = new int[Math.min(a.size(), b.size())];
        toRank = new int[fromRank.length];
        distance = new double[fromRank.length];
    }

    /** Pairs anew; of two that want the same point the nearer gets it. */
    void pair(Similarity s, double reach) {
        int[] taker = new int[b.size()];
        double[] takerDistance = new double[b.size()];
        Arrays.fill(taker, -1);
        for (int i = 0; i < a.size(); i++) {
            double x = s.toX(a.x[i], a.y[i]);
            double y = s.toY(a.x[i], a.y[i]);
            int nearest = grid.nearest(x, y, reach);
            if (nearest >= 0) {
                double apart = Math.hypot(b.x[nearest] - x, b.y[nearest] - y);
                if (taker[nearest] < 0 || apart < takerDistance[nearest]) {
                    taker[nearest] = i;
                    takerDistance[nearest] = apart;
                }
            }
        }
        size = 0;
        for (int j = 0; j < taker.length; j++) {
            if (taker[j] >= 0) {
                fromRank[size] = taker[j];
                toRank[size] = j;
                distance[size++] = takerDistance[j];
            }
        }
    }

    /**
     * Least squares over the pairs, each with the inverse of its expected variance; at least two.
     *
     * @param before scale and mirroring of the transform that paired them
     */
    Similarity fit(Similarity before) {
        double[] x = new double[size];
        double[] y = new double[size];
        double[] u = new double[size];
        double[] v = new double[size];
        double[] weight = new double[size];
        for (int p = 0; p < size; p++) {
            x[p] = a.x[fromRank[p]];
            y[p] = a.y[fromRank[p]];
            u[p] = b.x[toRank[p]];
            v[p] = b.y[toRank[p]];
            weight[p] = 1 / Math.pow(expected(p, before), 2);
        }
        return Similarity.fit(x, y, u, v, weight, size, before.mirrored());
    }

    /** Error of one coordinate of a pair to be expected from both stars, pixels of the second list. */
    private double expected(int pair, Similarity s) {
        return Math.hypot(b.sigma[toRank[pair]], s.scale() * a.sigma[fromRank[pair]]);
    }

    /** Gives up pairs that are farther apart than both {@code reach} and so many times the error to be expected. */
    void keep(Similarity s, double reach, double sigmas) {
        int kept = 0;
        for (int p = 0; p < size; p++) {
            if (distance[p] <= Math.max(reach, sigmas * expected(p, s))) {
                fromRank[kept] = fromRank[p];
                toRank[kept] = toRank[p];
                distance[kept++] = distance[p];
            }
        }
        size = kept;
    }

    int size() {
        return size;
    }

    int fromRank(int pair) {
        return fromRank[pair];
    }

    int toRank(int pair) {
        return toRank[pair];
    }

    /** Error of one coordinate, from the median distance; 0 without pairs. */
    double sigma() {
        if (size == 0) {
            return 0;
        }
        double[] sorted = Arrays.copyOf(distance, size);
        Arrays.sort(sorted);
        return sorted[size / 2] / RAYLEIGH_MEDIAN;
    }

    double rms() {
        double sum = 0;
        for (int p = 0; p < size; p++) {
            sum += distance[p] * distance[p];
        }
        return Math.sqrt(sum / size);
    }

    /** How many of the second list lie within {@code reach} of the first, all told. */
    int neighbours(Similarity s, double reach) {
        int count = 0;
        for (int i = 0; i < a.size(); i++) {
            count += grid.count(s.toX(a.x[i], a.y[i]), s.toY(a.x[i], a.y[i]), reach);
        }
        return count;
    }
}
