package noctuary.effect;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import noctuary.image.Asinh;

/**
 * Finds the curve and a kernel together: the picture is the curve of the origin under the kernel, where smoothing or
 * sharpening came before the stretch, or the kernel of the curve, where it came after. The right curve in the right order
 * leaves nothing of the shape of stars unexplained, and the kernel's sum is one, which tells the curve's height.
 */
final class KernelStretch {
    private static final int PACES = 12;
    private static final double LEAST_SOFTNESS = 0.5;
    private static final double MOST_SOFTNESS = 2000;
    private static final double LEAST_HEIGHT = 0.04;
    private static final double MOST_HEIGHT = 50;
    private static final double STEP = 0.3;

    private final List<Patch> patches;
    private final double sky;
    private final double noise;
    private final double base;
    private final double scale;

    /**
     * @param noise of a pixel of the origin about its sky
     * @param base what the sky became
     * @param scale of what is little, share of white
     */
    KernelStretch(List<Patch> patches, double sky, double noise, double base, double scale) {
        this.patches = patches;
        this.sky = sky;
        this.noise = noise;
        this.base = base;
        this.scale = scale;
    }

    /** @param misfit of the picture, comparable between orders */
    record Found(Curve curve, double misfit, boolean before) {}

    /** The kernel came after the stretch. */
    Found after() {
        double[] best = lowest(
                sky,
                Math.log(LEAST_SOFTNESS * noise),
                Math.log(MOST_SOFTNESS * noise),
                noise,
                (middle, s) -> after(middle, Math.exp(s)).misfit());
        double softness = Math.exp(best[1]);
        KernelFit fit = after(best[0], softness);
        return new Found(new Curve(best[0], softness, fit.constant(), fit.gain()), fit.misfit(), false);
    }

    private KernelFit after(double middle, double softness) {
        return KernelFit.of(
                patches.stream()
                        .map(p -> new KernelFit.Pair(
                                each(p.origin(), v -> Asinh.asinh((v - middle) / softness)),
                                each(p.picture(), v -> v),
                                ones(p)))
                        .toList(),
                scale);
    }

    /** The kernel came before the stretch. */
    Found before() {
        double[] best = lowest(
                base,
                Math.log(LEAST_HEIGHT),
                Math.log(MOST_HEIGHT),
                0.05,
                (b, h) -> before(b, Math.exp(h)).misfit());
        double height = Math.exp(best[1]);
        KernelFit fit = before(best[0], height);
        return new Found(
                new Curve(sky - fit.constant() / fit.gain(), 1 / fit.gain(), best[0], height), fit.misfit(), true);
    }

    private KernelFit before(double at, double height) {
        return KernelFit.of(
                patches.stream()
                        .map(p -> new KernelFit.Pair(
                                each(p.origin(), v -> v - sky),
                                each(p.picture(), v -> Math.sinh((v - at) / height)),
                                each(p.picture(), v -> height / Math.cosh((v - at) / height))))
                        .toList(),
                scale);
    }

    /** Lowest misfit, in the second number first and then in both. */
    private static double[] lowest(double first, double low, double high, double step, DoubleBinaryOperator misfit) {
        double pace = (high - low) / PACES;
        double best = low;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= PACES; k++) {
            double at = misfit.applyAsDouble(first, low + k * pace);
            best = at < least ? low + k * pace : best;
            least = Math.min(least, at);
        }
        double second = Lowest.between(best - pace, best + pace, s -> misfit.applyAsDouble(first, s));
        Simplex.Corner corner = Simplex.lowest(first, second, -step, STEP, misfit::applyAsDouble);
        return new double[] {corner.x(), corner.y()};
    }

    /** Where the picture follows the origin itself, as about the sky: the curve's slope is the kernel's gain. */
    static List<KernelFit.Pair> plain(List<Patch> sky, double level) {
        return sky.stream()
                .map(p -> new KernelFit.Pair(each(p.origin(), v -> v - level), each(p.picture(), v -> v), ones(p)))
                .toList();
    }

    private interface Of {
        double at(double value);
    }

    private static double[] each(float[] values, Of of) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = of.at(values[i]);
        }
        return out;
    }

    private static double[] ones(Patch patch) {
        double[] ones = new double[patch.origin().length];
        Arrays.fill(ones, 1);
        return ones;
    }
}
