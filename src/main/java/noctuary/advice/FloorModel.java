package noctuary.advice;

import java.util.OptionalDouble;

/**
 * Noise of a mean of N frames with something that does not average out: σ² = a / N + b.
 *
 * @param perFrame a, the variance of one frame that averages out
 * @param floor b, the variance that stays
 */
public record FloorModel(double perFrame, double floor) {
    /**
     * Least squares over 1/N with relative weights, b not below zero.
     *
     * @param frames N, at least two different
     * @param variance σ² of each mean
     */
    public static FloorModel fit(double[] frames, double[] variance) {
        double s = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < frames.length; i++) {
            double x = 1 / frames[i];
            double w = 1 / (variance[i] * variance[i]);
            s += w;
            sx += w * x;
            sy += w * variance[i];
            sxx += w * x * x;
            sxy += w * x * variance[i];
        }
        double a = (s * sxy - sx * sy) / (s * sxx - sx * sx);
        double b = (sy - a * sx) / s;
        return b >= 0 ? new FloorModel(a, b) : new FloorModel(sxy / sxx, 0);
    }

    public double sigma(double frames) {
        return Math.sqrt(perFrame / frames + floor);
    }

    /** The number of frames at which half of the variance no longer averages out; absent without a floor. */
    public OptionalDouble breakFrames() {
        return floor > 0 ? OptionalDouble.of(perFrame / floor) : OptionalDouble.empty();
    }
}
