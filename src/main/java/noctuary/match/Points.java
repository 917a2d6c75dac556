package noctuary.match;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.stars.Star;

/** Positions of a star list, brightest first, and where each stood in the list. */
final class Points {
    /** Error of a centre against width over signal-to-noise: about 0.6 for stars on a bright sky (from memory). */
    private static final double CENTROID = 0.6;
    /** What brightness does not cure; common practice, no source. */
    private static final double FLOOR_PX = 0.03;
    /** Taken for stars without width or signal-to-noise ratio, and at most. */
    private static final double UNKNOWN_SIGMA_PX = 0.5;

    final double[] x;
    final double[] y;
    /** Expected error of each coordinate, pixels. */
    final double[] sigma;

    final int[] index;
    final double minX;
    final double maxX;
    final double minY;
    final double maxY;

    private Points(double[] x, double[] y, double[] sigma, int[] index) {
        this.x = x;
        this.y = y;
        this.sigma = sigma;
        this.index = index;
        minX = Arrays.stream(x).min().orElse(0);
        maxX = Arrays.stream(x).max().orElse(0);
        minY = Arrays.stream(y).min().orElse(0);
        maxY = Arrays.stream(y).max().orElse(0);
    }

    static Points of(List<Star> stars) {
        Comparator<Integer> brightestFirst = Comparator.comparingDouble(i -> -flux(stars.get(i)));
        int[] order = IntStream.range(0, stars.size())
                .filter(i -> Double.isFinite(stars.get(i).x())
                        && Double.isFinite(stars.get(i).y()))
                .boxed()
                .sorted(brightestFirst
                        .thenComparingDouble(i -> stars.get(i).x())
                        .thenComparingDouble(i -> stars.get(i).y()))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Points(
                Arrays.stream(order).mapToDouble(i -> stars.get(i).x()).toArray(),
                Arrays.stream(order).mapToDouble(i -> stars.get(i).y()).toArray(),
                Arrays.stream(order).mapToDouble(i -> sigma(stars.get(i))).toArray(),
                order);
    }

    /** The points at these ranks, in that order. */
    Points at(int[] ranks) {
        return new Points(
                Arrays.stream(ranks).mapToDouble(r -> x[r]).toArray(),
                Arrays.stream(ranks).mapToDouble(r -> y[r]).toArray(),
                Arrays.stream(ranks).mapToDouble(r -> sigma[r]).toArray(),
                Arrays.stream(ranks).map(r -> index[r]).toArray());
    }

    int size() {
        return x.length;
    }

    boolean encloses(double px, double py, double margin) {
        return px >= minX - margin && px <= maxX + margin && py >= minY - margin && py <= maxY + margin;
    }

    double area() {
        return Math.max(1, maxX - minX) * Math.max(1, maxY - minY);
    }

    double diagonal() {
        return Math.hypot(maxX - minX, maxY - minY);
    }

    private static double sigma(Star star) {
        double noise = CENTROID * star.fwhmPx() / star.snr();
        return noise >= 0 && noise < UNKNOWN_SIGMA_PX ? Math.hypot(FLOOR_PX, noise) : UNKNOWN_SIGMA_PX;
    }

    private static double flux(Star star) {
        return Double.isFinite(star.flux()) ? star.flux() : Double.NEGATIVE_INFINITY;
    }
}
