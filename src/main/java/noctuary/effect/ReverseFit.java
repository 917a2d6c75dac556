package noctuary.effect;

import java.util.Arrays;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * Fits the curve the other way round: the picture with the curve undone holds the same light in every cell as the
 * origin. So it is when something that moves light and keeps its sum, as smoothing and sharpening do, came before the
 * stretch; a star's light under the stretch is then not what it was, and {@link CurveFit} would be misled.
 */
final class ReverseFit {
    private static final double BACKGROUND_QUANTILE = 0.3;
    /** A base off the background is believed when it lessens the misfit to this share. */
    private static final double BETTER = 0.6;

    /** Heights that are tried: curves as strong as 10¹⁰ and as good as straight. */
    private static final double LEAST_HEIGHT = 0.04;

    private static final double MOST_HEIGHT = 50;
    private static final int PACES = 16;
    private static final double BASE_STEP = 0.1;
    private static final double HEIGHT_STEP = 0.3;

    /** Doubt about a cell's light as a share of how much the cell varies beyond what noise does: what crosses borders. */
    private static final double DOUBT = 0.004;

    /** Doubt about calm cells over their scatter: part of it is noise of the picture, which flattens the slope. */
    private static final double CALM_DOUBT = 4;

    private static final double CALM_QUANTILE = 0.3;
    private static final double CALM = 1.3;
    private static final double FIRST_SHARE = 0.02;

    private final Cells cells;
    private final double[] levels;
    private final double[] spreads;
    private final double usual;
    private double[] sigma;

    ReverseFit(Cells cells) {
        this.cells = cells;
        this.levels = cells.levels();
        this.spreads = cells.spreads();
        this.usual = Robust.quantile(spreads, CALM_QUANTILE);
        weigh(FIRST_SHARE * usual);
    }

    private void weigh(double base) {
        sigma = Arrays.stream(spreads)
                .map(s -> Math.hypot(base, DOUBT * Math.sqrt(Math.max(0, s * s - CALM * CALM * usual * usual))))
                .toArray();
    }

    Curve fit() {
        double base = Robust.quantile(cells.picture(), BACKGROUND_QUANTILE);
        Curve first = high(base, LEAST_HEIGHT, MOST_HEIGHT);
        weigh(Math.max(1e-6 * usual, CALM_DOUBT * calm(first)));
        Curve still = high(base, LEAST_HEIGHT, MOST_HEIGHT);
        Curve moved = moved(still);
        return misfit(moved) < BETTER * misfit(still) ? moved : still;
    }

    /** Scatter of the misfits of calm cells. */
    private double calm(Curve curve) {
        double[] off = misfits(curve);
        return Robust.sigma(IntStream.range(0, off.length)
                .filter(k -> spreads[k] < CALM * usual)
                .mapToDouble(k -> off[k])
                .toArray());
    }

    /** Searches height and base together. */
    private Curve moved(Curve start) {
        Simplex.Corner best = Simplex.lowest(
                start.base(),
                Math.log(start.height()),
                -BASE_STEP,
                HEIGHT_STEP,
                (base, height) -> at(base, Math.exp(height)).misfit());
        double height = Math.exp(best.y());
        RobustLine line = at(best.x(), height);
        return new Curve(line.base(), line.height(), best.x(), height);
    }

    private Curve high(double base, double from, double to) {
        double low = Math.log(from);
        double pace = (Math.log(to) - low) / PACES;
        double best = low;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= PACES; k++) {
            double misfit = at(base, Math.exp(low + k * pace)).misfit();
            best = misfit < least ? low + k * pace : best;
            least = Math.min(least, misfit);
        }
        double height = Math.exp(Lowest.between(
                best - pace, best + pace, h -> at(base, Math.exp(h)).misfit()));
        RobustLine line = at(base, height);
        return new Curve(line.base(), line.height(), base, height);
    }

    private double misfit(Curve curve) {
        return at(curve.base(), curve.height()).misfit();
    }

    /** Origin over the picture with this base and height undone; infinite misfit where it falls. */
    private RobustLine at(double base, double height) {
        RobustLine line = RobustLine.of(undone(base, height), levels, sigma);
        return line.height() > 0 ? line : new RobustLine(line.base(), line.height(), Double.POSITIVE_INFINITY);
    }

    /** Means over the cells of sinh((picture - base) / height). */
    private double[] undone(double base, double height) {
        return cells.shown().parallelStream()
                .mapToDouble(pixels -> {
                    double sum = 0;
                    for (float pixel : pixels) {
                        double grown = Math.exp((pixel - base) / height);
                        sum += grown - 1 / grown;
                    }
                    return sum / 2 / pixels.length;
                })
                .toArray();
    }

    /** Origin minus picture undone, cell by cell, in the origin's units. */
    double[] misfits(Curve curve) {
        double[] undone = undone(curve.base(), curve.height());
        return IntStream.range(0, undone.length)
                .mapToDouble(k -> levels[k] - curve.middle() - curve.softness() * undone[k])
                .toArray();
    }
}
