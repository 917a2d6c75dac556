package noctuary.measure;

import java.util.Arrays;
import java.util.Optional;
import noctuary.image.Mosaic;
import noctuary.image.Plane;
import noctuary.match.Alignment;
import noctuary.noise.NoiseReport;

/**
 * Adds frames up in the middle of the field, every other one apart, by nearest pixels; of a colour mosaic the pixels of
 * one green phase. Noise is that of second differences along the rows, which the smooth light of a nebula does not touch.
 */
final class FrameStacker {
    private static final int LARGEST = 1024;

    private final int stride;
    private final int phaseX;
    private final int left;
    private final int top;
    private final int width;
    private final int height;
    private final float[][] sums;
    private int frames;

    FrameStacker(int frameWidth, int frameHeight, Optional<Mosaic> mosaic) {
        stride = mosaic.isPresent() ? 2 : 1;
        phaseX = mosaic.isPresent() && mosaic.get().filterAt(0, 0) != 'G' ? 1 : 0;
        width = Math.min(LARGEST, frameWidth / stride);
        height = Math.min(LARGEST, frameHeight / stride);
        left = (frameWidth - width * stride) / 2 / stride * stride + phaseX;
        top = (frameHeight - height * stride) / 2 / stride * stride;
        sums = new float[2][width * height];
    }

    /**
     * @param to from the field of the first frame to this one
     * @param level taken off
     * @param light of this frame over that of the first
     */
    void add(Plane plane, Optional<Alignment> to, double level, double light) {
        float[] sum = sums[frames++ % 2];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double u = left + (double) x * stride;
                double v = top + (double) y * stride;
                double[] at = to.isPresent() ? to.get().apply(u, v) : new double[] {u, v};
                int px = nearest(at[0], phaseX);
                int py = nearest(at[1], 0);
                boolean there = px >= 0 && py >= 0 && px < plane.width() && py < plane.height();
                sum[y * width + x] += there ? (float) ((plane.at(px, py) - level) / light) : Float.NaN;
            }
        }
    }

    private int nearest(double position, int phase) {
        return (int) Math.rint((position - phase) / stride) * stride + phase;
    }

    /** Noise of the mean of all frames so far; NaN where none is left. */
    double noise() {
        return noise(1);
    }

    /** Noise of what differs between frames, as the mean has it; of an even number of frames. */
    double fresh() {
        return noise(-1);
    }

    private double noise(float sign) {
        float[] mean = Arrays.copyOf(sums[0], sums[0].length);
        for (int i = 0; i < mean.length; i++) {
            mean[i] = (mean[i] + sign * sums[1][i]) / frames;
        }
        return NoiseReport.measure(Plane.of(width, height, mean), Optional.empty())
                .flatMap(report -> report.sigmaDerSnr().stream().boxed().findFirst())
                .orElse(Double.NaN);
    }
}
