package noctuary.effect;

import java.util.Arrays;
import java.util.stream.IntStream;
import noctuary.image.Asinh;
import noctuary.stats.Robust;

/**
 * Height and base of a curve of given middle and softness, by weighted least squares over cells. A cell counts less the
 * more it varies within, because smoothing and stretching may have come in either order.
 */
final class CellFit {
    /** Doubt about a cell's mean as a share of how much the stretched cell varies beyond what noise does. */
    private static final double DOUBT = 0.05;

    private static final double LEAST_SIGMA = 1e-5;
    private static final double FIRST_SIGMA = 1e-3;
    private static final double CALM_QUANTILE = 0.3;
    private static final double CALM = 1.3;

    private final Cells cells;
    private double[] sigma;

    CellFit(Cells cells) {
        this.cells = cells;
        double[] spread = cells.spreads();
        double usual = Robust.quantile(spread, CALM_QUANTILE);
        this.sigma = Arrays.stream(spread)
                .map(s -> FIRST_SIGMA * Math.max(1, Math.pow(s / usual, 2)))
                .toArray();
    }

    /** @param misfit sum over the cells; one that is far off counts little more than one somewhat off */
    record Tried(Curve curve, double misfit) {}

    Tried at(double middle, double softness) {
        RobustLine line = RobustLine.of(means(middle, softness), cells.picture(), sigma);
        return new Tried(
                new Curve(middle, softness, line.base(), line.height()),
                line.height() > 0 ? line.misfit() : Double.POSITIVE_INFINITY);
    }

    /** Picture minus curve, cell by cell. */
    double[] misfits(Curve curve) {
        double[] bent = means(curve.middle(), curve.softness());
        return IntStream.range(0, bent.length)
                .mapToDouble(k -> cells.picture()[k] - curve.base() - curve.height() * bent[k])
                .toArray();
    }

    /** Weighs the cells anew by what a curve makes of them. */
    void weigh(Curve curve) {
        sigma = doubts(curve);
    }

    /** Expected misfit of every cell under a curve: what calm cells show, and more where light varies. */
    double[] doubts(Curve curve) {
        double[] varied = cells.spreads(curve);
        double usual = Robust.quantile(varied, CALM_QUANTILE);
        double[] off = misfits(curve);
        double[] calm = IntStream.range(0, off.length)
                .filter(k -> varied[k] < CALM * usual)
                .mapToDouble(k -> off[k])
                .toArray();
        double base = Math.max(LEAST_SIGMA, Robust.sigma(calm));
        return Arrays.stream(varied)
                .map(v -> Math.hypot(base, DOUBT * Math.sqrt(Math.max(0, v * v - CALM * CALM * usual * usual))))
                .toArray();
    }

    private double[] means(double middle, double softness) {
        return cells.origin().parallelStream()
                .mapToDouble(pixels -> {
                    double sum = 0;
                    for (float pixel : pixels) {
                        sum += Asinh.asinh((pixel - middle) / softness);
                    }
                    return sum / pixels.length;
                })
                .toArray();
    }
}
