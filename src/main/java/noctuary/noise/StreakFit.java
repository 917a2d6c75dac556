package noctuary.noise;

import java.util.ArrayList;
import java.util.List;
import noctuary.stats.Robust;

/**
 * Fits a ridge to an autocorrelation: height s² times a fall by 1 - k / length along the track and by 1 - |p| / width
 * beside it. Light of the sky is broad, so every point is compared with points beside the ridge at the same k; smoothed
 * noise is round and short, so the ring it fills is left out and the median of every ring is taken away.
 */
final class StreakFit {
    private static final int FIRST_LAG = 3;
    private static final int LAST_FIRST_LAG = 12;
    private static final int LAST_LAG = 28;
    private static final double FADED = 0.02;
    private static final double[] WIDTHS = {0.8, 1, 1.3, 1.7, 2.2};
    private static final double[] LENGTHS = {6, 8, 11, 16, 24, 40, 80};
    private static final double BESIDE_FROM = 3;
    private static final double BESIDE_TO = 6;

    private final Autocorrelation rho;
    private final double[] ring = new double[Autocorrelation.REACH + 1];
    private final int firstLag;
    private final double error;

    StreakFit(Autocorrelation rho) {
        this.rho = rho;
        for (int radius = 1; radius <= LAST_LAG; radius++) {
            ring[radius] = Robust.median(onRing(radius));
        }
        int faded = FIRST_LAG;
        while (faded < LAST_FIRST_LAG && Math.abs(ring[faded]) > FADED) {
            faded++;
        }
        this.firstLag = faded;
        this.error = error();
    }

    private double[] onRing(int radius) {
        List<Double> values = new ArrayList<>();
        for (int dy = 0; dy <= radius; dy++) {
            for (int dx = -radius; dx <= radius; dx++) {
                if ((dy > 0 || dx > 0) && Math.round(Math.hypot(dx, dy)) == radius) {
                    values.add(rho.at(dx, dy));
                }
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double error() {
        List<Double> values = new ArrayList<>();
        for (int radius = firstLag; radius <= LAST_LAG; radius++) {
            for (double value : onRing(radius)) {
                values.add(value - ring[radius]);
            }
        }
        return Robust.sigma(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The most significant ridge of any angle. */
    Streak best() {
        Streak best = Streak.NONE;
        for (int angle = -89; angle <= 90; angle++) {
            Streak here = along(angle);
            best = here.significance() > best.significance() ? here : best;
        }
        return best;
    }

    Streak along(double angleDeg) {
        List<Point> points = points(angleDeg);
        Streak best = Streak.NONE;
        for (double width : WIDTHS) {
            for (double length : LENGTHS) {
                Streak here = fit(points, width, length, angleDeg);
                best = here.significance() > best.significance() ? here : best;
            }
        }
        return best;
    }

    /** @param k along the track @param p beside it @param rho above what is beside the ridge */
    private record Point(double k, double p, double rho) {}

    private List<Point> points(double angleDeg) {
        double cos = Math.cos(Math.toRadians(angleDeg));
        double sin = Math.sin(Math.toRadians(angleDeg));
        double[] sum = new double[LAST_LAG + 2];
        int[] count = new int[LAST_LAG + 2];
        List<Point> near = new ArrayList<>();
        for (int dy = -LAST_LAG; dy <= LAST_LAG; dy++) {
            for (int dx = -LAST_LAG; dx <= LAST_LAG; dx++) {
                double k = dx * cos + dy * sin;
                double p = Math.abs(dy * cos - dx * sin);
                int radius = (int) Math.round(Math.hypot(dx, dy));
                if (k < firstLag || k > LAST_LAG || radius > LAST_LAG || p > BESIDE_TO) {
                    continue;
                }
                double value = rho.at(dx, dy) - ring[radius];
                if (p < WIDTHS[WIDTHS.length - 1]) {
                    near.add(new Point(k, p, value));
                } else if (p >= BESIDE_FROM) {
                    sum[(int) Math.round(k)] += value;
                    count[(int) Math.round(k)]++;
                }
            }
        }
        return near.stream()
                .map(point -> {
                    int bin = (int) Math.round(point.k);
                    return new Point(point.k, point.p, point.rho - (count[bin] == 0 ? 0 : sum[bin] / count[bin]));
                })
                .toList();
    }

    private Streak fit(List<Point> points, double width, double length, double angleDeg) {
        double product = 0;
        double square = 0;
        for (Point point : points) {
            double model = Math.max(0, 1 - point.k / length) * Math.max(0, 1 - point.p / width);
            product += model * point.rho;
            square += model * model;
        }
        if (!(product > 0) || !(error > 0)) {
            return Streak.NONE;
        }
        double share = Math.min(0.99, product / square);
        return new Streak(Math.sqrt(share / (1 - share)), angleDeg, product / (error * Math.sqrt(square)));
    }
}
