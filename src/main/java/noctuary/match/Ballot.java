package noctuary.match;

import java.util.Arrays;
import java.util.Optional;

/** The star pairs of all proposals in one cell, and the transform most of them agree on. */
final class Ballot {
    private static final int ROUNDS = 6;
    private static final int MOST_PAIRS = 3000;

    private final Points a;
    private final Points b;
    private final IntList ranks = new IntList();
    private int mirroredVotes;
    private int votes;

    Ballot(Points a, Points b) {
        this.a = a;
        this.b = b;
    }

    void add(Triangles ofA, int i, Triangles ofB, int j) {
        votes++;
        mirroredVotes += ofA.counterClockwise[i] != ofB.counterClockwise[j] ? 1 : 0;
        for (int corner = 0; corner < 3; corner++) {
            ranks.add(ofA.corners[3 * i + corner]);
            ranks.add(ofB.corners[3 * j + corner]);
        }
    }

    /** Least squares with the worse half left out of each round. */
    Optional<Similarity> fit() {
        int count = Math.min(MOST_PAIRS, ranks.size() / 2);
        double[] x = new double[count];
        double[] y = new double[count];
        double[] u = new double[count];
        double[] v = new double[count];
        double[] even = new double[count];
        Arrays.fill(even, 1);
        for (int p = 0; p < count; p++) {
            x[p] = a.x[ranks.get(2 * p)];
            y[p] = a.y[ranks.get(2 * p)];
            u[p] = b.x[ranks.get(2 * p + 1)];
            v[p] = b.y[ranks.get(2 * p + 1)];
        }
        boolean mirrored = 2 * mirroredVotes > votes;
        Similarity s = Similarity.fit(x, y, u, v, even, count, mirrored);
        for (int round = 0; round < ROUNDS && s.finite(); round++) {
            double limit = 2.5 * medianDistance(s, x, y, u, v, count) + 1e-9;
            int kept = 0;
            for (int p = 0; p < count; p++) {
                if (distance(s, x[p], y[p], u[p], v[p]) <= limit) {
                    x[kept] = x[p];
                    y[kept] = y[p];
                    u[kept] = u[p];
                    v[kept++] = v[p];
                }
            }
            count = kept;
            s = Similarity.fit(x, y, u, v, even, count, mirrored);
        }
        return Optional.of(s).filter(Similarity::finite);
    }

    private static double medianDistance(Similarity s, double[] x, double[] y, double[] u, double[] v, int count) {
        double[] distances = new double[count];
        for (int p = 0; p < count; p++) {
            distances[p] = distance(s, x[p], y[p], u[p], v[p]);
        }
        Arrays.sort(distances);
        return distances[count / 2];
    }

    private static double distance(Similarity s, double x, double y, double u, double v) {
        return Math.hypot(s.toX(x, y) - u, s.toY(x, y) - v);
    }
}
