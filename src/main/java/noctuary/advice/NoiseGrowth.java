package noctuary.advice;

import static noctuary.advice.Words.fixed;
import static noctuary.advice.Words.say;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import noctuary.measure.FrameMatch;
import noctuary.measure.FrameReport;
import noctuary.measure.FrameSheet;
import noctuary.stats.Robust;

/**
 * Whether noise fell as the root of the number of frames, from one entry's frames and its stack. The stack's counts are
 * brought to those of the mean frame by the light of the stars that both hold, so that cloud in some does not count as
 * noise.
 *
 * @param frames that the stack holds
 * @param single noise of one frame, counts
 * @param stack noise of the stack, counts of a frame
 * @param stackError of that, from the star light
 */
public record NoiseGrowth(int frames, double single, double stack, double stackError) {
    private static final int MOST_MATCHED = 12;
    /** Of the ratio of counts: the weights of the frames are not known. */
    private static final double LEAST_ERROR = 0.05;

    private static final double ERRORS = 3;
    /** Excess variance that is worth a word. */
    private static final double LEAST_FLOOR = 0.2;

    static Optional<NoiseGrowth> of(EntryContext context) {
        List<FrameSheet> lights = context.lights();
        Optional<FrameSheet> stack =
                context.sheet().stack().filter(s -> s.measurement().readable());
        if (lights.size() < 2
                || stack.isEmpty()
                || stack.get().measurement().planes().size() != 1) {
            return Optional.empty();
        }
        double[] noise = noise(lights);
        double[] stacked = noise(List.of(stack.get()));
        List<FrameSheet> some = spread(lights);
        List<FrameMatch> matches = some.stream()
                .flatMap(frame -> FrameMatch.of(frame, stack.get()).stream())
                .filter(m -> m.fluxRatio().isPresent())
                .toList();
        if (noise.length < 2 || stacked.length == 0 || matches.size() < some.size()) {
            return Optional.empty();
        }
        double scale = 1
                / matches.stream()
                        .mapToDouble(m -> 1 / m.fluxRatio().getAsDouble())
                        .average()
                        .orElseThrow();
        double error = Math.max(
                LEAST_ERROR,
                matches.get(0).fluxRatioError() / matches.get(0).fluxRatio().getAsDouble());
        double counts = stacked[0] / scale;
        return Optional.of(new NoiseGrowth(lights.size(), Robust.median(noise), counts, error * counts));
    }

    /** At most a dozen, evenly over the night: matching stars takes time. */
    private static List<FrameSheet> spread(List<FrameSheet> lights) {
        int n = Math.min(MOST_MATCHED, lights.size());
        return IntStream.range(0, n)
                .mapToObj(i -> lights.get((int) ((long) i * lights.size() / n)))
                .toList();
    }

    private static double[] noise(List<FrameSheet> files) {
        return files.stream()
                .flatMap(f -> f.report().background().stream())
                .mapToDouble(FrameReport.Sky::noise)
                .toArray();
    }

    /** The noise that one frame and the root of their number foretell. */
    public double foretold() {
        return single / Math.sqrt(frames);
    }

    public FloorModel model() {
        return FloorModel.fit(new double[] {1, frames}, new double[] {single * single, stack * stack});
    }

    /** Whether something stays that does not average out, clearly more than the errors. */
    public boolean hasFloor() {
        double excess = stack * stack - foretold() * foretold();
        return excess > LEAST_FLOOR * foretold() * foretold() && stack - foretold() > ERRORS * stackError;
    }

    private boolean smoothed() {
        return foretold() - stack > ERRORS * stackError && stack < 0.85 * foretold();
    }

    public String sentence() {
        String numbers = say(
                "One frame has a noise of %s counts; %s frames should have %s, the stack has %s ± %s.",
                fixed(single, 2), frames, fixed(foretold(), 2), fixed(stack, 2), fixed(stackError, 2));
        if (smoothed()) {
            return numbers
                    + " That is less than the root of time can give: the frames were interpolated or smoothed when "
                    + "they were combined, so the two cannot be compared pixel by pixel.";
        }
        if (!hasFloor()) {
            return numbers + " The stack is as quiet as its frames let it be.";
        }
        long stop = Math.round(model().breakFrames().orElseThrow());
        return numbers
                + say(
                        " Something stays that does not average out: from about %s on, more of them hardly help until "
                                + "calibration or dithering is mended.",
                        Words.count(stop, "frame", "frames"));
    }
}
