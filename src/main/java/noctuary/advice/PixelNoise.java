package noctuary.advice;

import java.util.List;
import java.util.OptionalDouble;
import noctuary.measure.FrameSheet;
import noctuary.measure.NoiseOverTime;
import noctuary.stats.Robust;

/**
 * Noise of one pixel of one exposure, counts: from the differences between frames where they could be laid on each
 * other, since those hold no stars; else the median of what each frame shows about its sky.
 *
 * @param error half the spread between pairs of frames, or of single frames about their median
 */
record PixelNoise(OptionalDouble counts, OptionalDouble error, boolean starFree) {
    static PixelNoise of(EntryContext context, List<FrameSheet> singles) {
        if (context.noise().isPresent()) {
            NoiseOverTime course = context.noise().get();
            return new PixelNoise(OptionalDouble.of(course.single()), OptionalDouble.of(course.singleError()), true);
        }
        double[] noise = singles.stream()
                .flatMap(f -> f.report().background().stream())
                .mapToDouble(sky -> sky.noise())
                .toArray();
        OptionalDouble error = noise.length < 3 ? OptionalDouble.empty() : OptionalDouble.of(Robust.sigma(noise));
        return noise.length == 0
                ? new PixelNoise(OptionalDouble.empty(), OptionalDouble.empty(), false)
                : new PixelNoise(OptionalDouble.of(Robust.median(noise)), error, false);
    }
}
