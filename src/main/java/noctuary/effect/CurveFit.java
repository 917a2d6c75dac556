package noctuary.effect;

import java.util.Arrays;
import noctuary.stats.Robust;

/** Fits the curve to cells: softness by search with the middle at the background, then both in turn. */
final class CurveFit {
    private static final double BACKGROUND_QUANTILE = 0.3;
    /** A middle off the background is believed when it lessens the misfit to this share. */
    private static final double BETTER = 0.9;

    /** Narrowest and widest softness that are tried, in noise and in ranges of light. */
    private static final double LEAST_NOISES = 0.02;

    private static final double MOST_RANGES = 1000;
    private static final double PACE = 0.4;
    private static final double MIDDLE_STEP = 0.3;
    private static final double SOFTNESS_STEP = 0.4;
    private static final int PACES = 24;

    private final CellFit fit;
    private final double background;
    private final double noise;
    private final double range;

    CurveFit(Cells cells) {
        double[] levels = cells.levels();
        this.fit = new CellFit(cells);
        this.background = Robust.quantile(levels, BACKGROUND_QUANTILE);
        this.noise = Robust.median(cells.spreads());
        this.range = Arrays.stream(levels).max().orElse(1) - background;
    }

    Curve fit() {
        double least = Math.log(LEAST_NOISES * noise);
        double most = Math.log(MOST_RANGES * Math.max(range, noise));
        Curve first = soft(background, least, most);
        fit.weigh(first);
        double at = Math.log(first.softness());
        Curve curve = soft(background, Math.max(least, at - 3), Math.min(most, at + 3));
        fit.weigh(curve);
        Curve moved = moved(curve);
        return misfit(moved) < BETTER * misfit(curve) ? moved : curve;
    }

    private double misfit(Curve curve) {
        return fit.at(curve.middle(), curve.softness()).misfit();
    }

    /** Searches softness and middle together. */
    private Curve moved(Curve start) {
        Simplex.Corner best = Simplex.lowest(
                start.middle(),
                Math.log(start.softness()),
                -Math.max(noise, MIDDLE_STEP * start.softness()),
                SOFTNESS_STEP,
                (middle, softness) -> fit.at(middle, Math.exp(softness)).misfit());
        return fit.at(best.x(), Math.exp(best.y())).curve();
    }

    private Curve soft(double middle, double from, double to) {
        double best = from;
        double least = Double.POSITIVE_INFINITY;
        double pace = Math.max(PACE, (to - from) / PACES);
        for (double at = from; at <= to; at += pace) {
            double misfit = fit.at(middle, Math.exp(at)).misfit();
            best = misfit < least ? at : best;
            least = Math.min(least, misfit);
        }
        double softness = Lowest.between(
                best - pace, best + pace, s -> fit.at(middle, Math.exp(s)).misfit());
        return fit.at(middle, Math.exp(softness)).curve();
    }

    double[] misfits(Curve curve) {
        return fit.misfits(curve);
    }

    double[] doubts(Curve curve) {
        return fit.doubts(curve);
    }
}
