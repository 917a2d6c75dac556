package noctuary.stats;

/** Order statistics without sorting everything. The values are reordered in place; NaN among them is not allowed. */
public final class Selection {
    private Selection() {}

    /** The median of the first {@code count} values, the mean of the middle two for an even count; NaN for none. */
    public static double median(float[] values, int count) {
        if (count == 0) {
            return Double.NaN;
        }
        float upper = kth(values, count, count / 2);
        if (count % 2 == 1) {
            return upper;
        }
        float lower = values[0];
        for (int i = 1; i < count / 2; i++) {
            lower = Math.max(lower, values[i]);
        }
        return 0.5 * ((double) lower + upper);
    }

    /**
     * The median of values that come in steps, such as whole numbers: each stands for the values half a step to both
     * sides, so that the median moves smoothly between the steps. Without equal values near the middle, the median.
     */
    public static double medianOfSteps(float[] values, int count) {
        double median = median(values, count);
        int below = 0;
        int equal = 0;
        float smaller = Float.NEGATIVE_INFINITY;
        float larger = Float.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            below += values[i] < median ? 1 : 0;
            equal += values[i] == median ? 1 : 0;
            smaller = values[i] < median ? Math.max(smaller, values[i]) : smaller;
            larger = values[i] > median ? Math.min(larger, values[i]) : larger;
        }
        double step = Math.min(median - smaller, larger - median);
        return equal < 2 || Double.isInfinite(step) ? median : median + step * ((count / 2.0 - below) / equal - 0.5);
    }

    /**
     * Standard deviation from the median absolute deviation about {@code centre} of the first {@code count} values,
     * which are replaced by their deviations; NaN for none.
     */
    public static double sigma(float[] values, int count, double centre) {
        for (int i = 0; i < count; i++) {
            values[i] = (float) Math.abs(values[i] - centre);
        }
        return Robust.MAD_TO_SIGMA * median(values, count);
    }

    /** The mean of the values from the first to the third quartile; NaN for none. */
    public static double middleMean(float[] values, int count) {
        if (count == 0) {
            return Double.NaN;
        }
        int from = count / 4;
        int to = Math.max(from + 1, count - count / 4);
        kth(values, count, to - 1);
        kth(values, to, from);
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }

    /** The value of rank {@code k} (from 0) among the first {@code count}; smaller ones end up before it. */
    public static float kth(float[] values, int count, int k) {
        int low = 0;
        int high = count - 1;
        while (low < high) {
            float pivot = middleOf(values[low], values[(low + high) >>> 1], values[high]);
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    float swap = values[i];
                    values[i++] = values[j];
                    values[j--] = swap;
                }
            }
            if (k > j && k < i) {
                return values[k];
            }
            low = k >= i ? i : low;
            high = k <= j ? j : high;
        }
        return values[k];
    }

    private static float middleOf(float a, float b, float c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
