package noctuary.noise;

/** The two lowest and the two highest values met and how often: clipping piles pixels up at the end of the range. */
final class Ends {
    private final float saturation;
    private final Tally low = new Tally();
    private final Tally high = new Tally();
    private long pixels;
    private long full;

    /** @param saturation from which a pixel counts as full; infinite when unknown */
    Ends(float saturation) {
        this.saturation = saturation;
    }

    void look(float[] line) {
        float below = low.second;
        float above = Math.min(-high.second, saturation);
        int between = 0;
        for (float v : line) {
            if (v > below && v < above) {
                between++;
            } else if (v == v) {
                add(v);
                below = low.second;
                above = Math.min(-high.second, saturation);
            }
        }
        pixels += between;
    }

    private void add(float v) {
        low.add(v, 1);
        high.add(-v, 1);
        pixels++;
        full += v >= saturation ? 1 : 0;
    }

    void merge(Ends other) {
        low.add(other.low.first, other.low.firstCount);
        low.add(other.low.second, other.low.secondCount);
        high.add(other.high.first, other.high.firstCount);
        high.add(other.high.second, other.high.secondCount);
        pixels += other.pixels;
        full += other.full;
    }

    /** Share of the pixels that were clipped at the bottom; NaN without pixels. */
    double blackPercent() {
        return 100.0 * low.pile() / pixels;
    }

    /** Share of the pixels at or above saturation, or piled up below it; NaN without pixels. */
    double whitePercent() {
        return 100.0 * Math.max(full, high.pile()) / pixels;
    }

    /** The smallest two distinct values with their numbers. */
    private static final class Tally {
        private float first = Float.POSITIVE_INFINITY;
        private float second = Float.POSITIVE_INFINITY;
        private long firstCount;
        private long secondCount;

        void add(float value, long count) {
            if (count == 0 || Float.isInfinite(value)) {
                return;
            }
            if (value < first) {
                second = first;
                secondCount = firstCount;
                first = value;
                firstCount = count;
            } else if (value == first) {
                firstCount += count;
            } else if (value < second) {
                second = value;
                secondCount = count;
            } else if (value == second) {
                secondCount += count;
            }
        }

        /**
         * How many lie at the very end, when they are too many: the tail of a distribution thins out, so the last value
         * has fewer than the one before it.
         */
        long pile() {
            return secondCount > 0 && firstCount > secondCount + 3 * Math.sqrt(secondCount + 1.0) + 3 ? firstCount : 0;
        }
    }
}
