package noctuary.effect;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import noctuary.image.Asinh;
import noctuary.stats.Robust;

/**
 * Fits the curve to cells by weighted least squares: height and base in closed form, softness and middle by search. A
 * cell counts less the more it varies within, because smoothing and stretching may have come in either order.
 */
final class CurveFit {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 22;
    /** Doubt about a cell's mean as a share of how much the stretched cell varies beyond what noise does. */
    private static final double DOUBT = 0.05;

    private static final double LEAST_SIGMA = 1e-5;
    private static final double TUKEY = 4.685;
    /** A middle off the background is believed when it lessens the misfit to this share. */
    private static final double BETTER = 0.9;

    private final Cells cells;
    private final double background;
    private final double[] level;
    private double[] sigma;

    CurveFit(Cells cells) {
        this.cells = cells;
        this.level = cells.origin().stream().mapToDouble(CurveFit::mean).toArray();
        double[] spread = cells.origin().stream().mapToDouble(CurveFit::spread).toArray();
        double usual = Robust.quantile(spread, 0.3);
        this.background = Robust.quantile(level, 0.3);
        this.sigma = Arrays.stream(spread)
                .map(s -> 1e-3 * Math.max(1, Math.pow(s / usual, 2)))
                .toArray();
    }

    /** The origin's level where there is least light. */
    double background() {
        return background;
    }

    Curve fit() {
        double noise = Robust.median(
                cells.origin().stream().mapToDouble(CurveFit::spread).toArray());
        double range = Arrays.stream(level).max().orElse(1) - background;
        double least = Math.log(0.02 * noise);
        double most = Math.log(1e3 * Math.max(range, noise));
        Curve curve = soft(background, least, most);
        for (int round = 0; round < 2; round++) {
            sigma = doubts(curve);
            double at = Math.log(curve.softness());
            curve = soft(background, Math.max(least, at - 3), Math.min(most, at + 3));
        }
        Curve moved = moved(curve, noise);
        return tried(moved).misfit() < BETTER * tried(curve).misfit() ? moved : curve;
    }

    /** Searches softness and middle in turn. */
    private Curve moved(Curve start, double noise) {
        Curve curve = start;
        double reach = 4 * Math.max(noise, curve.softness());
        for (int round = 0; round < 3; round++) {
            double softness = curve.softness();
            double middle = lowest(
                    curve.middle() - reach,
                    curve.middle() + reach,
                    m -> tried(m, softness).misfit());
            double at = Math.log(softness);
            curve = soft(middle, at - 1.5, at + 1.5);
            reach /= 2;
        }
        return curve;
    }

    private Curve soft(double middle, double from, double to) {
        double best = from;
        double least = Double.POSITIVE_INFINITY;
        double pace = Math.max(0.4, (to - from) / 24);
        for (double at = from; at <= to; at += pace) {
            double misfit = tried(middle, Math.exp(at)).misfit();
            best = misfit < least ? at : best;
            least = Math.min(least, misfit);
        }
        double softness =
                lowest(best - pace, best + pace, s -> tried(middle, Math.exp(s)).misfit());
        return tried(middle, Math.exp(softness)).curve();
    }

    private static double lowest(double from, double to, DoubleUnaryOperator of) {
        double low = from;
        double high = to;
        double a = high - GOLDEN * (high - low);
        double b = low + GOLDEN * (high - low);
        double atA = of.applyAsDouble(a);
        double atB = of.applyAsDouble(b);
        for (int i = 0; i < NARROWINGS && high - low > 1e-4 * Math.abs(low + high) + 1e-9; i++) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - GOLDEN * (high - low);
                atA = of.applyAsDouble(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + GOLDEN * (high - low);
                atB = of.applyAsDouble(b);
            }
        }
        return (low + high) / 2;
    }

    private Tried tried(Curve curve) {
        return tried(curve.middle(), curve.softness());
    }

    /** Height and base for a middle and a softness: least squares, four times with doubtful cells weighed down. */
    private Tried tried(double middle, double softness) {
        double[] bent = means(middle, softness);
        Curve curve = new Curve(middle, softness, 0, 1);
        double[] robust = new double[bent.length];
        Arrays.fill(robust, 1);
        for (int round = 0; round < 4; round++) {
            curve = leastSquares(bent, robust, middle, softness);
            for (int k = 0; k < robust.length; k++) {
                double off = (cells.picture()[k] - curve.base() - curve.height() * bent[k]) / sigma[k] / TUKEY;
                robust[k] = 1 / (1 + off * off);
            }
        }
        return new Tried(curve, misfit(curve, bent));
    }

    private record Tried(Curve curve, double misfit) {}

    private Curve leastSquares(double[] bent, double[] robust, double middle, double softness) {
        double sum = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (int k = 0; k < bent.length; k++) {
            double w = robust[k] / (sigma[k] * sigma[k]);
            double y = cells.picture()[k];
            sum += w;
            sx += w * bent[k];
            sy += w * y;
            sxx += w * bent[k] * bent[k];
            sxy += w * bent[k] * y;
        }
        double height = (sum * sxy - sx * sy) / (sum * sxx - sx * sx);
        return new Curve(middle, softness, (sy - height * sx) / sum, height);
    }

    /** Sum of the misfits over the cells' doubts; one that is far off counts little more than one somewhat off. */
    private double misfit(Curve curve, double[] bent) {
        double sum = 0;
        for (int k = 0; k < bent.length; k++) {
            double scaled = (cells.picture()[k] - curve.base() - curve.height() * bent[k]) / sigma[k] / TUKEY;
            sum += Math.log1p(scaled * scaled);
        }
        return curve.height() > 0 ? sum : Double.POSITIVE_INFINITY;
    }

    /** Picture minus curve, cell by cell. */
    double[] misfits(Curve curve) {
        double[] bent = means(curve.middle(), curve.softness());
        return IntStream.range(0, bent.length)
                .mapToDouble(k -> cells.picture()[k] - curve.base() - curve.height() * bent[k])
                .toArray();
    }

    double[] doubts(Curve curve) {
        double[] varied = cells.origin().stream()
                .mapToDouble(pixels -> {
                    float[] shown = new float[pixels.length];
                    for (int i = 0; i < shown.length; i++) {
                        shown[i] = (float) curve.at(pixels[i]);
                    }
                    return spread(shown);
                })
                .toArray();
        double usual = Robust.quantile(varied, 0.3);
        double[] off = misfits(curve);
        double[] calm = IntStream.range(0, off.length)
                .filter(k -> varied[k] < 1.3 * usual)
                .mapToDouble(k -> off[k])
                .toArray();
        double base = Math.max(LEAST_SIGMA, Robust.sigma(calm));
        return Arrays.stream(varied)
                .map(v -> Math.hypot(base, DOUBT * Math.sqrt(Math.max(0, v * v - 1.7 * usual * usual))))
                .toArray();
    }

    double[] levels() {
        return level;
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

    private static double mean(float[] values) {
        double sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double spread(float[] values) {
        double mean = mean(values);
        double sum = 0;
        for (float value : values) {
            sum += (value - mean) * (value - mean);
        }
        return Math.sqrt(sum / values.length);
    }
}
