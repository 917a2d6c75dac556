package noctuary.draw;

/** Values from {@code low} to {@code high} laid on a straight stretch from {@code start} to {@code end}. */
record Scale(double low, double high, double start, double end) {
    /** The place of a value; the middle of the stretch when the range is empty. */
    double at(double value) {
        if (high == low) {
            return (start + end) / 2;
        }
        return start + (value - low) / (high - low) * (end - start);
    }

    /** The length of a difference, never negative. */
    double length(double difference) {
        return high == low ? 0 : Math.abs(difference / (high - low) * (end - start));
    }
}
