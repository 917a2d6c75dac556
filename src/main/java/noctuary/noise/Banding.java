package noctuary.noise;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import noctuary.stats.Robust;

/**
 * Excess scatter of whole lines (rows or columns) over what the scatter within the lines explains: an analysis of
 * variance of the means of line segments, so that correlated noise and structure of the sky raise the expectation as
 * well as the finding.
 */
final class Banding {
    /** Segments and lines further off than this many robust sigmas are left out. */
    private static final double OUTLIER = 5;
    /** The excess variance must exceed this many standard errors of the expected variance. */
    private static final double LEAST_ERRORS = 8;
    /** Less than this share of the pixel noise is no defect. */
    private static final double LEAST_SHARE = 0.02;

    private static final int LEAST_LINES = 16;
    private static final int LEAST_SEGMENTS = 4;

    private final float[][] means;
    private final int blocks;
    private final IntUnaryOperator start;
    private final double segmentSigma;

    /**
     * @param means by line and segment, relative to the background; taken over
     * @param start first line of each block of lines that share a background, and the number of lines at the end
     */
    Banding(float[][] means, int blocks, IntUnaryOperator start) {
        this.means = means;
        this.blocks = blocks;
        this.start = start;
        IntStream.range(0, blocks).parallel().forEach(this::level);
        this.segmentSigma = segmentSigma();
    }

    /** Every segment of a block loses its mean over the lines, and with it the errors of the background. */
    private void level(int block) {
        int from = start.applyAsInt(block);
        int to = start.applyAsInt(block + 1);
        for (int s = 0; s < means[from].length; s++) {
            double sum = 0;
            int count = 0;
            for (int line = from; line < to; line++) {
                sum += Float.isNaN(means[line][s]) ? 0 : means[line][s];
                count += Float.isNaN(means[line][s]) ? 0 : 1;
            }
            for (int line = from; line < to; line++) {
                means[line][s] -= (float) (sum / count);
            }
        }
    }

    private double segmentSigma() {
        int step = Math.max(1, means.length * means[0].length / 5_000);
        return Robust.sigma(IntStream.range(0, means.length * means[0].length)
                .filter(i -> i % step == 0)
                .mapToDouble(i -> means[i / means[0].length][i % means[0].length] - rough(means[i / means[0].length]))
                .filter(Double::isFinite)
                .toArray());
    }

    private static double rough(float[] line) {
        double sum = 0;
        int count = 0;
        for (float value : line) {
            sum += Float.isNaN(value) ? 0 : value;
            count += Float.isNaN(value) ? 0 : 1;
        }
        return sum / count;
    }

    /**
     * Standard deviation of the lines beyond noise, 0 when there is none worth the name; NaN when the frame is too
     * small to tell.
     *
     * @param pixelSigma noise of a pixel
     */
    double excess(double pixelSigma) {
        Line[] lines = IntStream.range(0, means.length)
                .mapToObj(this::line)
                .filter(l -> l.segments >= LEAST_SEGMENTS)
                .toArray(Line[]::new);
        if (lines.length < LEAST_LINES) {
            return Double.NaN;
        }
        double typical =
                Robust.sigma(Arrays.stream(lines).mapToDouble(l -> l.mean).toArray());
        Line[] kept = Arrays.stream(lines)
                .filter(l -> Math.abs(l.mean) <= (OUTLIER + 1) * typical)
                .toArray(Line[]::new);
        double freedom = 1 - (double) blocks / means.length;
        double found = Trend.unexplained(
                Arrays.stream(kept).mapToInt(l -> l.at).toArray(),
                Arrays.stream(kept).mapToDouble(l -> l.mean).toArray(),
                blocks,
                start);
        double expected =
                Arrays.stream(kept).mapToDouble(l -> l.variance).average().orElse(0) / freedom;
        double excess = found - expected;
        double least =
                Math.max(LEAST_ERRORS * Math.sqrt(2.0 / kept.length) * expected, Math.pow(LEAST_SHARE * pixelSigma, 2));
        return excess > least ? Math.sqrt(excess) : 0;
    }

    private Line line(int at) {
        float[] segments = means[at];
        double centre = rough(segments);
        double sum = 0;
        double sum2 = 0;
        int count = 0;
        for (float value : segments) {
            double d = value - centre;
            if (Math.abs(d) <= OUTLIER * segmentSigma) {
                sum += d;
                sum2 += d * d;
                count++;
            }
        }
        double variance = count < 2 ? 0 : (sum2 - sum * sum / count) / (count - 1.0) / count;
        return new Line(at, centre + sum / count, variance, count);
    }

    /** Mean of a line, its variance as its segments scatter, and their number. */
    private record Line(int at, double mean, double variance, int segments) {}
}
