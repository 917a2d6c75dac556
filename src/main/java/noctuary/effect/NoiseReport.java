package noctuary.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;

/** The noise of the background, after over before, each number with the reason where it cannot be had. */
final class NoiseReport {
    static final String NO_BACKGROUND = "too little of the field is free of stars and light";

    static final String FAINT_LIGHT =
            "faint light lies over all of the field, and after so much smoothing it passes for noise";

    static final String RUNS_INTO_BLACK =
            "sharpened noise is cut to black, and how much of it depends on faint light that lies over all of the field";

    static final String SHARPENED_INTO_BLACK = "sharpened noise is cut to black, which leaves too little of it to tell";

    static final String SHARPENED_BETWEEN =
            "the stars stand so close to each other that the slope of the stretch about the sky is not known well enough"
                    + " for sharpened noise";

    static final int[] SIZES = {1, 2, 4, 8};
    private static final double MOST_CUT_PERCENT = 10;
    private static final double MEDIAN_CUT_PERCENT = 40;
    /** As {@link #MOST_CUT_PERCENT} where the noise grew and a stretch may have come after. */
    private static final double GROWN_CUT_PERCENT = 3;

    /** From so much on nothing is told of grown noise but that of single pixels. */
    private static final double NIBBLED_CUT_PERCENT = 1.5;

    /** Noise after over before from which it was sharpened for certain. */
    private static final double GROWN = 1.3;
    /** Under more of a cut no kernel is looked for. */
    private static final double LITTLE_CUT_PERCENT = 1;

    private final List<Block> blocks;
    private final String drowned;
    private final Layers layers;
    private final Stretching stretching;
    private final double cutPercent;
    private final boolean unsettled;
    private final boolean whole;
    private final String blind;
    private final BackgroundNoise before;
    private final BackgroundNoise after;
    private final Optional<WhiteNoise> white;
    /** Noise after over before by the upper half of the values; NaN where it is not looked at. */
    private final double upperRatio;

    private final boolean grown;
    private final String unsure;

    /**
     * @param ground with the background
     * @param drowned why other light passes for noise in it; empty when it does not
     * @param dark what the picture made of it
     * @param whole whether nothing was resampled
     * @param close whether stars stand close to each other
     */
    NoiseReport(
            Ground ground,
            String drowned,
            Layers layers,
            Stretching stretching,
            DarkSky dark,
            boolean whole,
            boolean close) {
        this.blocks = ground.background();
        this.drowned = drowned;
        this.layers = layers;
        this.stretching = stretching;
        this.cutPercent = dark.mainCutPercent();
        this.unsettled = dark.unsettled();
        this.whole = whole;
        this.blind = blind();
        this.before = blind.isEmpty() ? new BackgroundNoise(blocks, layers.stretched()) : null;
        this.after = blind.isEmpty() ? new BackgroundNoise(blocks, layers.shown()) : null;
        this.white = blind.isEmpty() && whole && cutPercent < LITTLE_CUT_PERCENT
                ? WhiteNoise.of(ground, layers, before)
                : Optional.empty();
        this.upperRatio = whole && !blocks.isEmpty()
                ? upper(layers.shown()) / upper(layers.endless()) / stretching.skyGain()
                : Double.NaN;
        this.grown = upperRatio > GROWN;
        this.unsure = unsure(close);
    }

    private String blind() {
        if (blocks.isEmpty()) {
            return NO_BACKGROUND;
        }
        return cutPercent > MOST_CUT_PERCENT ? "too much of the background is cut to black to tell" : "";
    }

    /** Why noise cannot be told; empty when it can. */
    String whyBlind() {
        return blind;
    }

    static List<Effect.Scale> scales(IntFunction<Amount> of) {
        List<Effect.Scale> scales = new ArrayList<>();
        for (int size : SIZES) {
            scales.add(new Effect.Scale(size, of.apply(size)));
        }
        return scales;
    }

    List<Effect.Scale> scales() {
        return scales(this::ratio);
    }

    /** After resampling only means over many pixels compare: interpolation itself takes noise from small ones. */
    private Amount ratio(int size) {
        if (!blind.isEmpty()) {
            return size == 1 ? upper() : Amount.absent(blind);
        }
        if (!unsure.isEmpty()) {
            return Amount.absent(unsure);
        }
        if (size > 1 && nibbled()) {
            return Amount.absent(unsettled && stretching.skyKnown() ? RUNS_INTO_BLACK : SHARPENED_INTO_BLACK);
        }
        Optional<Double> known =
                white.flatMap(w -> w.ratio(size).map(r -> r / w.gain(stretching.skyGain(), stretching.skyKnown())));
        if (known.isPresent() || !drowned.isEmpty()) {
            return known.map(Amount::of).orElse(Amount.absent(drowned));
        }
        if (size > 1 && unsettled && stretching.skyKnown()) {
            return Amount.absent(RUNS_INTO_BLACK);
        }
        return whole || size == SIZES[SIZES.length - 1]
                ? Amount.known(after.sigma(size) / before.sigma(size) / stretching.skyGain(), "the origin has no noise")
                : Amount.absent("the picture was resized or turned, which changes fine noise by itself");
    }

    /** Whether some of sharpened noise is black, and with it light of faint stars. */
    boolean nibbled() {
        return grown && !stretching.stepAfter() && cutPercent > NIBBLED_CUT_PERCENT;
    }

    /** Why sharpened noise cannot be told; empty when it can, or is none. */
    private String unsure(boolean close) {
        if (nibbled() && cutPercent > GROWN_CUT_PERCENT) {
            return SHARPENED_INTO_BLACK;
        }
        return grown && close && !stretching.noShapes().isEmpty() ? SHARPENED_BETWEEN : "";
    }

    /** Under a cut that leaves the median above black: the upper half of the noise still shows. */
    private Amount upper() {
        return !blocks.isEmpty() && whole && cutPercent < MEDIAN_CUT_PERCENT && unsure.isEmpty()
                ? Amount.known(upperRatio, blind)
                : Amount.absent(blind);
    }

    private double upper(Map<Tile, float[]> layer) {
        return new BackgroundNoise(blocks, layer).upperSigma();
    }

    Amount blotchBefore() {
        return blind.isEmpty() ? Amount.of(before.blotch()) : Amount.absent(blind);
    }

    Amount blotchAfter() {
        Optional<Double> known = white.flatMap(WhiteNoise::blotch);
        if (known.isPresent()) {
            return Amount.of(known.get());
        }
        String why = blindAfter().isEmpty() ? drowned : blindAfter();
        return why.isEmpty() ? Amount.of(after.blotch()) : Amount.absent(why);
    }

    Effect.Neighbours neighbours() {
        String flat = "the background has no noise";
        return new Effect.Neighbours(
                blind.isEmpty() ? Amount.known(before.neighbourCorrelation(), flat) : Amount.absent(blind),
                blindAfter().isEmpty()
                        ? Amount.known(after.neighbourCorrelation(), flat)
                        : Amount.absent(blindAfter()));
    }

    /** Why the picture's noise cannot be told; empty when it can. */
    private String blindAfter() {
        return blind.isEmpty() ? unsure : blind;
    }
}
