package noctuary.effect;

import java.util.List;
import java.util.Optional;

/**
 * How steeply the picture follows the origin about the sky, as the sky's own noise tells it: the sum of the kernel that
 * leads from one to the other. Smoothing, sharpening and medians leave it as the stretch made it ({@link KernelFit#plain}).
 *
 * @param slope share of white for one unit of the origin
 * @param error standard error, as a share of the slope
 * @param misfit of the kernel, as in {@link KernelFit}
 * @param noise of a pixel of the origin about its sky
 * @param bent whether a stretch bends within noise that was sharpened before; the slope is then that of {@link CoreSlope}
 */
record SkySlope(double slope, double error, double misfit, double noise, boolean bent) {
    private static final int MOST_PATCHES = 400;
    private static final int FEWEST_PATCHES = 12;
    /** Most of a kernel on its outermost rings when its sum is believed. */
    private static final double OUTER = 0.1;

    /** What a bend taken out leaves over, of what was left over before, when it is believed. */
    private static final double MOST_LEFT = 0.15;

    /** Least that a curve must be off before it is said to be. */
    private static final double NEAR = 0.03;

    private static final double ERRORS = 2.5;
    /** Times that a curve's slope may be off by, either way: with more, it is not the curve alone that is wrong. */
    private static final double FARTHEST = 3;

    /**
     * @param noise of a pixel of the origin about its sky
     * @param scale of what is little, share of white
     * @return nothing where too little of the sky is clear, or the kernel is wider than what is looked at
     */
    static Optional<SkySlope> of(List<Block> background, double sky, double noise, double scale) {
        return among(Patch.skyAndCut(background, MOST_PATCHES), sky, noise, scale)
                .filter(SkySlope::bent)
                .or(() -> among(Patch.sky(background, MOST_PATCHES), sky, noise, scale)
                        .filter(slope -> !slope.bent()));
    }

    private static Optional<SkySlope> among(List<Patch> patches, double sky, double noise, double scale) {
        if (patches.size() < FEWEST_PATCHES) {
            return Optional.empty();
        }
        List<KernelFit.Pair> pairs = KernelStretch.plain(patches, sky);
        KernelFit fit = KernelFit.plain(pairs, scale);
        if (fit.outer() >= OUTER) {
            return Optional.empty();
        }
        SkySlope plain = new SkySlope(fit.gain(), fit.gainError(noise), fit.misfit(), noise, false);
        return Optional.of(fit.wider() > 1 ? plain.orBent(pairs, fit, scale) : plain);
    }

    /** Itself, unless a stretch after the sharpening explains most of what the kernel leaves over, and better than one before. */
    private SkySlope orBent(List<KernelFit.Pair> pairs, KernelFit fit, double scale) {
        List<double[]> rows = KernelFit.rows(pairs);
        KernelFit straight = StraightSky.kernel(rows, fit, scale);
        if (!(straight.leftShare() < MOST_LEFT * fit.leftShare())
                || StretchedSky.kernel(pairs, fit, noise, scale).leftShare() < straight.leftShare()) {
            return this;
        }
        CoreSlope core = CoreSlope.of(
                rows.stream()
                        .map(row -> new double[] {straight.under(row), KernelFit.shown(row)})
                        .toList(),
                straight.wider());
        return new SkySlope(
                core.slope(), Math.hypot(straight.gainError(noise), core.error() / core.slope()), misfit, noise, true);
    }

    /** This slope over that of a curve, on the whole of the noise about the sky. */
    double over(Transfer transfer, double sky) {
        return slope / transfer.slope(sky, noise);
    }

    boolean agrees(double gain) {
        return Math.abs(gain - 1) < Math.max(NEAR, ERRORS * error);
    }

    /** Whether the curve may be kept and the noise set right by {@code gain}. */
    boolean corrects(double gain) {
        return gain < FARTHEST && gain > 1 / FARTHEST;
    }
}
