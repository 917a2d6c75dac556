package noctuary.advice;

import java.util.OptionalDouble;

/**
 * What an entry's sheet says of its noise.
 *
 * @param noiseE standard deviation of one pixel of one exposure, electrons; absent without single frames or gain
 * @param whyNoNoise a reason, where it is absent
 * @param noiseErrorE how far frames or pairs of frames differ in that
 * @param starFree whether it comes from differences between frames, in which stars too faint to be found cancel
 * @param subSeconds of one exposure; absent too where a header says 0, which nothing can be divided by
 * @param totalSeconds counted
 * @param levelE light of the sky in one exposure by its level above dark frames of the same exposure
 * @param darkE electrons of dark current in one exposure, from dark frames beside the lights
 * @param bandingE what rows and columns scatter in excess, one exposure, electrons
 * @param streak of the stack: standard deviation of the streaks over that of the rest of the noise
 * @param stackBanding of the stack: excess of rows and columns over the noise
 */
record Depth(
        OptionalDouble noiseE,
        OptionalDouble noiseErrorE,
        boolean starFree,
        String whyNoNoise,
        OptionalDouble subSeconds,
        OptionalDouble totalSeconds,
        OptionalDouble readNoiseE,
        OptionalDouble levelE,
        OptionalDouble darkE,
        OptionalDouble bandingE,
        OptionalDouble arcsecPerPx,
        OptionalDouble streak,
        OptionalDouble stackBanding,
        double clippedBlackPercent,
        double clippedWhitePercent) {

    Depth {
        boolean open = subSeconds.isPresent() && subSeconds.getAsDouble() > 0;
        subSeconds = open ? subSeconds : OptionalDouble.empty();
    }

    /** Squared noise that light brings: measured, less reading and dark current. A variance of counts is their number. */
    OptionalDouble lightE() {
        if (noiseE.isEmpty() || readNoiseE.isEmpty()) {
            return OptionalDouble.empty();
        }
        double rest = square(noiseE.getAsDouble()) - square(readNoiseE.getAsDouble()) - darkE.orElse(0);
        return rest > 0 ? OptionalDouble.of(rest) : OptionalDouble.empty();
    }

    /** Electrons a second a pixel from sky and dark current: what reading is weighed against. */
    OptionalDouble backgroundRate() {
        OptionalDouble light = lightE();
        return light.isPresent() && subSeconds.isPresent()
                ? OptionalDouble.of((light.getAsDouble() + darkE.orElse(0)) / subSeconds.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Half the width of what {@link #backgroundRate} may be, as its noise tells: d(σ²) = 2 σ dσ. */
    OptionalDouble backgroundRateError() {
        return noiseE.isPresent() && noiseErrorE.isPresent() && subSeconds.isPresent()
                ? OptionalDouble.of(2 * noiseE.getAsDouble() * noiseErrorE.getAsDouble() / subSeconds.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The rate of the sky by its level, dark current left out; absent without dark frames. */
    OptionalDouble levelRate() {
        return levelE.isPresent() && subSeconds.isPresent()
                ? OptionalDouble.of(levelE.getAsDouble() / subSeconds.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Electrons a second a square arcsecond from the sky. */
    OptionalDouble skyRate() {
        OptionalDouble light = lightE();
        return light.isPresent() && subSeconds.isPresent() && arcsecPerPx.isPresent()
                ? OptionalDouble.of(light.getAsDouble() / subSeconds.getAsDouble() / square(arcsecPerPx.getAsDouble()))
                : OptionalDouble.empty();
    }

    private static double square(double value) {
        return value * value;
    }
}
