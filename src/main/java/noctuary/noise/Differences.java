package noctuary.noise;

import java.util.Arrays;
import java.util.stream.IntStream;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * Noise of a pixel from differences of near pixels, which smooth light does not touch. White noise gives the standard
 * deviation; noise that was interpolated or smoothed gives less, and by how much tells it apart.
 */
final class Differences {
    /** As published, where {@link Robust#MAD_TO_SIGMA} has more digits. */
    private static final double DER_FACTOR = 1.482602;

    private Differences() {}

    /**
     * 1.482602 / sqrt(6) times the median of |2 x(i) - x(i-2) - x(i+2)| along the rows (Stoehr et al. 2008), over all
     * given rows together; differences that touch a missing pixel or an exact zero are skipped. NaN when none is left.
     */
    static double derSnr(float[][] rows) {
        float[] all = new float
                [IntStream.range(0, rows.length)
                        .map(i -> Math.max(0, rows[i].length - 4))
                        .sum()];
        int count = 0;
        for (float[] row : rows) {
            for (int i = 2; i < row.length - 2; i++) {
                float d = Math.abs(2 * row[i] - row[i - 2] - row[i + 2]);
                if (d == d && d < Float.POSITIVE_INFINITY && row[i] != 0 && row[i - 2] != 0 && row[i + 2] != 0) {
                    all[count++] = d;
                }
            }
        }
        return DER_FACTOR / Math.sqrt(6) * Selection.medianOfSteps(all, count);
    }

    /**
     * The mean form of Immerkær 1996, sqrt(π/2) / 6 times the mean of |[1 -2 1; -2 4 -2; 1 -2 1] * x|; stars inflate
     * it.
     *
     * @param triples groups of three successive rows
     */
    static double immerkaerMean(float[][][] triples) {
        float[] all = laplacians(triples);
        double sum = 0;
        for (float value : all) {
            sum += value;
        }
        return Math.sqrt(Math.PI / 2) / 6 * sum / all.length;
    }

    /** As {@link #immerkaerMean} with the median, 1.482602 / 6 times it, which stars do not move. */
    static double immerkaerMedian(float[][][] triples) {
        float[] all = laplacians(triples);
        return Robust.MAD_TO_SIGMA / 6 * Selection.medianOfSteps(all, all.length);
    }

    private static float[] laplacians(float[][][] triples) {
        int most = IntStream.range(0, triples.length)
                .map(i -> Math.max(0, triples[i][0].length - 2))
                .sum();
        float[] all = new float[most];
        int count = 0;
        for (float[][] rows : triples) {
            for (int x = 1; x < rows[0].length - 1; x++) {
                float d = Math.abs(second(rows[0], x) - 2 * second(rows[1], x) + second(rows[2], x));
                if (d == d && d < Float.POSITIVE_INFINITY) {
                    all[count++] = d;
                }
            }
        }
        return Arrays.copyOf(all, count);
    }

    private static float second(float[] row, int x) {
        return row[x - 1] - 2 * row[x] + row[x + 1];
    }
}
