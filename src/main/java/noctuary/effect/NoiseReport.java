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

    static final int[] SIZES = {1, 2, 4, 8};
    private static final double MOST_CUT_PERCENT = 10;
    private static final double MEDIAN_CUT_PERCENT = 40;
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

    /**
     * @param ground with the background
     * @param drowned why other light passes for noise in it; empty when it does not
     * @param dark what the picture made of it
     * @param whole whether nothing was resampled
     */
    NoiseReport(Ground ground, String drowned, Layers layers, Stretching stretching, DarkSky dark, boolean whole) {
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

    /** Under a cut that leaves the median above black: the upper half of the noise still shows. */
    private Amount upper() {
        return !blocks.isEmpty() && whole && cutPercent < MEDIAN_CUT_PERCENT
                ? Amount.known(upper(layers.shown()) / upper(layers.endless()) / stretching.skyGain(), blind)
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
        String why = blind.isEmpty() ? drowned : blind;
        return why.isEmpty() ? Amount.of(after.blotch()) : Amount.absent(why);
    }

    Effect.Neighbours neighbours() {
        String flat = "the background has no noise";
        return blind.isEmpty()
                ? new Effect.Neighbours(
                        Amount.known(before.neighbourCorrelation(), flat),
                        Amount.known(after.neighbourCorrelation(), flat))
                : new Effect.Neighbours(Amount.absent(blind), Amount.absent(blind));
    }
}
