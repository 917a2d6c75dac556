package noctuary.stars;

import java.util.Arrays;
import noctuary.stats.Robust;
import noctuary.stats.Selection;

/**
 * Robust mode and noise of a set of pixels: histogram clipped at 3 sigma about its median until it stands still, then
 * 2.5 median - 1.5 mean where the two agree within 0.3 sigma, else the median (Bertin &amp; Arnouts 1996, A&amp;AS 117,
 * 393). The noise is freed of what the clip takes from a normal distribution. NaN for no pixels.
 *
 * @param fineNoise from second differences of neighbouring pixels, which no nebula reaches; rough, from few pixels
 */
record CellLevel(double level, double noise, double fineNoise) {
    static final CellLevel NOTHING = new CellLevel(Double.NaN, Double.NaN, Double.NaN);

    private static final int SAMPLE = 63;
    private static final int BINS = 128;
    private static final int TRIPLES = 63;
    private static final double REACH_SIGMAS = 6;
    /** Standard deviation left of a normal distribution clipped at 3 sigma until it stands still. */
    private static final double CLIPPED = 0.984846;

    static CellLevel of(float[] values, int n) {
        if (n == 0) {
            return NOTHING;
        }
        float[] sample = sample(values, n);
        double sigma = quickSigma(sample);
        double median = sample[sample.length / 2];
        if (!(sigma > 0)) {
            return new CellLevel(median, 0, 0);
        }
        double bin = 2 * REACH_SIGMAS * sigma / BINS;
        double quantum = quantum(sample);
        double low = median - REACH_SIGMAS * sigma;
        if (quantum > 0) {
            bin = quantum * Math.max(1, Math.ceil(bin / quantum));
            low = median - quantum / 2 - bin * Math.floor(REACH_SIGMAS * sigma / bin);
        }
        return clip(histogram(values, n, low, bin), low, bin, fineNoise(values, n));
    }

    private static float[] sample(float[] values, int n) {
        int count = Math.min(n, SAMPLE);
        int[] places = places(n, count);
        float[] sample = new float[count];
        for (int i = 0; i < count; i++) {
            sample[i] = values[places[i]];
        }
        Arrays.sort(sample);
        return sample;
    }

    /** So many places, evenly over the first {@code n}: i n / count, without a division for each. */
    private static int[] places(int n, int count) {
        int[] places = new int[count];
        int rest = 0;
        for (int i = 1; i < count; i++) {
            rest += n % count;
            places[i] = places[i - 1] + n / count + (rest < count ? 0 : 1);
            rest -= rest < count ? 0 : count;
        }
        return places;
    }

    /** From the lower half, which stars do not reach; falls back to wider quantiles for coarse steps. */
    private static double quickSigma(float[] sorted) {
        int n = sorted.length;
        double lower = sorted[n / 2] - (double) sorted[(int) (n * 0.1587)];
        double middle = (sorted[n * 3 / 4] - (double) sorted[n / 4]) / 1.3489795;
        return lower > 0 ? lower : middle > 0 ? middle : (sorted[n - 1] - (double) sorted[0]) / 6;
    }

    /** The step of quantised values, 0 when there is none. */
    private static double quantum(float[] sorted) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < sorted.length; i++) {
            double step = sorted[i] - (double) sorted[i - 1];
            if (step > 0 && step < least) {
                least = step;
            }
        }
        for (int i = 1; i < sorted.length; i++) {
            double steps = (sorted[i] - (double) sorted[i - 1]) / least;
            if (Math.abs(steps - Math.rint(steps)) > 0.001 * Math.max(1, steps)) {
                return 0;
            }
        }
        return least;
    }

    private static double fineNoise(float[] values, int n) {
        int count = Math.min(TRIPLES, n - 2);
        if (count < 1) {
            return Double.NaN;
        }
        int[] places = places(n - 2, count);
        float[] difference = new float[count];
        for (int i = 0; i < count; i++) {
            int k = 1 + places[i];
            difference[i] = Math.abs(2 * values[k] - values[k - 1] - values[k + 1]);
        }
        return Robust.MAD_TO_SIGMA / Math.sqrt(6) * Selection.kth(difference, count, count / 2);
    }

    private static int[] histogram(float[] values, int n, double low, double bin) {
        int[] even = new int[BINS + 3];
        int[] odd = new int[BINS + 3];
        float offset = (float) (low - bin);
        float scale = (float) (1 / bin);
        for (int i = 0; i + 1 < n; i += 2) {
            even[Math.max(0, Math.min(BINS + 2, (int) ((values[i] - offset) * scale)))]++;
            odd[Math.max(0, Math.min(BINS + 2, (int) ((values[i + 1] - offset) * scale)))]++;
        }
        if (n % 2 == 1) {
            even[Math.max(0, Math.min(BINS + 2, (int) ((values[n - 1] - offset) * scale)))]++;
        }
        int[] counts = new int[BINS + 1];
        for (int k = 0; k < counts.length; k++) {
            counts[k] = even[k + 1] + odd[k + 1];
        }
        return counts;
    }

    private static CellLevel clip(int[] counts, double low, double bin, double fineNoise) {
        int from = 0;
        int to = counts.length;
        double median = Double.NaN;
        double mean = Double.NaN;
        double sigma = 0;
        for (int pass = 0; pass < 12; pass++) {
            long sum = 0;
            long moment = 0;
            long square = 0;
            for (int k = from; k < to; k++) {
                sum += counts[k];
                moment += counts[k] * k;
                square += counts[k] * k * k;
            }
            double centre = (double) moment / sum;
            sigma = Math.sqrt(Math.max(0, (double) square / sum - centre * centre));
            median = medianBin(counts, from, to, sum / 2.0);
            mean = centre + 0.5;
            int nextFrom = (int) Math.max(0, Math.rint(median - 3 * sigma));
            int nextTo = (int) Math.min(counts.length, Math.max(nextFrom + 1, Math.rint(median + 3 * sigma)));
            if (nextFrom == from && nextTo == to) {
                break;
            }
            from = nextFrom;
            to = nextTo;
        }
        double mode = Math.abs(mean - median) < 0.3 * sigma ? 2.5 * median - 1.5 * mean : median;
        return new CellLevel(low + bin * mode, bin * sigma / CLIPPED, fineNoise);
    }

    /** Position of the median in bins, linear inside its bin. */
    private static double medianBin(int[] counts, int from, int to, double half) {
        int below = 0;
        for (int k = from; k < to; k++) {
            if (below + counts[k] >= half && counts[k] > 0) {
                return k + (half - below) / counts[k];
            }
            below += counts[k];
        }
        return (from + to) / 2.0;
    }
}
