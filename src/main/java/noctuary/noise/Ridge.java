package noctuary.noise;

import java.util.Arrays;

/** The points of an autocorrelation near one line through its middle, and the model that is fitted to them. */
final class Ridge {
    private static final int MOST = 400;

    private final double[] along = new double[MOST];
    private final double[] off = new double[MOST];
    private final double[] rho = new double[MOST];
    private int count;
    private final double[] besideSum;
    private final int[] besideCount;
    private double shapeWidth;
    private final double[] shape = new double[MOST];

    Ridge(int lastLag) {
        this.besideSum = new double[lastLag + 2];
        this.besideCount = new int[lastLag + 2];
    }

    /**
     * @param k along the line
     * @param p off the line, not negative
     */
    void addOn(double k, double p, double value) {
        along[count] = k;
        off[count] = p;
        rho[count++] = value;
    }

    void addBeside(double k, double value) {
        besideSum[(int) Math.round(k)] += value;
        besideCount[(int) Math.round(k)]++;
    }

    /** Every point loses the mean of what lies beside the ridge as far along. */
    void subtractBeside() {
        for (int i = 0; i < count; i++) {
            int k = (int) Math.round(along[i]);
            rho[i] -= besideCount[k] == 0 ? 0 : besideSum[k] / besideCount[k];
        }
    }

    /** @param error standard error of one point */
    Streak fit(double width, double length, double error, double angleDeg) {
        Match match = match(width, length);
        if (!(match.product > 0) || !(error > 0)) {
            return Streak.NONE;
        }
        double share = Math.min(0.99, match.share());
        return new Streak(
                Math.sqrt(share / (1 - share)),
                angleDeg,
                match.product / (error * Math.sqrt(match.square)),
                width,
                length);
    }

    /** Height of the ridge that fits best. */
    double share(double width, double length) {
        return match(width, length).share();
    }

    /** Sums of the points times the model, and of the model squared. */
    private record Match(double product, double square) {
        double share() {
            return product / square;
        }
    }

    private Match match(double width, double length) {
        shapeAcross(width);
        double product = 0;
        double square = 0;
        for (int i = 0; i < count; i++) {
            double model = along[i] < length ? shape[i] * (1 - along[i] / length) : 0;
            product += model * rho[i];
            square += model * model;
        }
        return new Match(product, square);
    }

    private void shapeAcross(double width) {
        if (width == shapeWidth) {
            return;
        }
        shapeWidth = width;
        Arrays.setAll(shape, i -> i < count ? Math.exp(-off[i] * off[i] / (2 * width * width)) : 0);
    }
}
