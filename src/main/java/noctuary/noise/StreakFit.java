package noctuary.noise;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * Fits a ridge to an autocorrelation: height s² times a fall by 1 - k / length along the track and by a
 * Gaussian of standard deviation {@code width} beside it. Light of the sky is broad, so every point is compared with
 * points beside the ridge at the same k; smoothed noise is round and short, so the ring it fills is left out and the
 * median of every ring is taken away.
 */
final class StreakFit {
    private static final int FIRST_LAG = 3;
    private static final int LAST_FIRST_LAG = 12;
    private static final int LAST_LAG = 28;
    private static final double FADED = 0.02;
    private static final double[] WIDTHS = {0.4, 0.55, 0.75, 1};
    private static final double[] LENGTHS = {6, 8, 11, 16, 24, 40, 80};
    private static final double[] FINE_WIDTHS = geometric(0.35, 1.12, 11);
    private static final double[] FINE_LENGTHS = geometric(5, 1.12, 30);
    /** Nothing that came through the optics is narrower. */
    private static final double[] BROAD = {1.4, 2};

    private static final double NEAR = 2.5;
    private static final double BESIDE_FROM = 3;
    private static final double BESIDE_TO = 6;

    private final Autocorrelation rho;
    private final double[] ring = new double[Autocorrelation.REACH + 1];
    private final int firstLag;
    private final double error;
    private final List<Lag> lags;

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
        this.lags = lags();
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
        double scatter =
                Robust.sigma(values.stream().mapToDouble(Double::doubleValue).toArray());
        return scatter * alikeNearby();
    }

    /** Sum of the squares near the middle: in smoothed noise the errors of neighbouring points go together. */
    private double alikeNearby() {
        double sum = 0;
        for (int dy = -FIRST_LAG; dy <= FIRST_LAG; dy++) {
            for (int dx = -FIRST_LAG; dx <= FIRST_LAG; dx++) {
                sum += rho.at(dx, dy) * rho.at(dx, dy);
            }
        }
        return sum;
    }

    private static double[] geometric(double first, double ratio, int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> first * Math.pow(ratio, i))
                .toArray();
    }

    /** The most significant ridge of any angle. */
    Streak best() {
        Streak coarse = IntStream.rangeClosed(-89, 90).mapToObj(this::along).reduce(Streak.NONE, StreakFit::better);
        return IntStream.rangeClosed(-3, 3)
                .mapToObj(i -> along(coarse.angleDeg() + i / 2.0, FINE_WIDTHS, FINE_LENGTHS))
                .reduce(coarse, StreakFit::better);
    }

    private static Streak better(Streak a, Streak b) {
        return b.significance() > a.significance() ? b : a;
    }

    Streak along(double angleDeg) {
        return along(angleDeg, WIDTHS, LENGTHS);
    }

    private Streak along(double angleDeg, double[] widths, double[] lengths) {
        Ridge ridge = ridge(angleDeg);
        Streak best = Streak.NONE;
        for (double width : widths) {
            for (double length : lengths) {
                best = better(best, ridge.fit(width, length, error, angleDeg));
            }
        }
        return best;
    }

    /** Significance of the best ridge of the same angle that is broad, as anything in the sky is. */
    double broadSignificance(Streak streak) {
        return along(streak.angleDeg(), BROAD, LENGTHS).significance();
    }

    /** Share of the variance that a ridge just like the given one takes; below zero where there is less than none. */
    double shareOf(Streak streak) {
        return ridge(streak.angleDeg()).share(streak.width(), streak.length());
    }

    /** What lies on and beside a ridge at the given angle. */
    private Ridge ridge(double angleDeg) {
        double cos = Math.cos(Math.toRadians(angleDeg));
        double sin = Math.sin(Math.toRadians(angleDeg));
        Ridge ridge = new Ridge(LAST_LAG);
        for (Lag lag : lags) {
            double k = Math.abs(lag.dx * cos + lag.dy * sin);
            double p = Math.abs(lag.dy * cos - lag.dx * sin);
            if (k >= firstLag && p < NEAR) {
                ridge.addOn(k, p, lag.rho);
            } else if (k >= firstLag && p >= BESIDE_FROM && p <= BESIDE_TO) {
                ridge.addBeside(k, lag.rho);
            }
        }
        ridge.subtractBeside();
        return ridge;
    }

    /** @param rho autocorrelation above the median of its ring */
    private record Lag(int dx, int dy, double rho) {}

    private List<Lag> lags() {
        List<Lag> lags = new ArrayList<>();
        for (int dy = 0; dy <= LAST_LAG; dy++) {
            for (int dx = -LAST_LAG; dx <= LAST_LAG; dx++) {
                int radius = (int) Math.round(Math.hypot(dx, dy));
                if ((dy > 0 || dx > 0) && radius <= LAST_LAG) {
                    lags.add(new Lag(dx, dy, rho.at(dx, dy) - ring[radius]));
                }
            }
        }
        return lags;
    }
}
