package noctuary.advice;

import java.util.OptionalDouble;

/**
 * How short single exposures may be before reading them adds noise. Many short ones against one long: the noise grows
 * by sqrt(1 + RN² / (B t)) with B the electrons a second a pixel that sky and dark current bring.
 */
public final class SubExposure {
    /** Growth of the noise that is put up with; a preference, not physics. */
    public static final double USUAL_GROWTH = 0.05;

    private SubExposure() {}

    /** C in t = C RN² / B: 1 / ((1 + p)² - 1). */
    public static double constant(double growth) {
        return 1 / ((1 + growth) * (1 + growth) - 1);
    }

    /**
     * The shortest exposure, seconds; absent without light to compare with.
     *
     * @param electronsPerSecond sky and dark current a pixel
     */
    public static OptionalDouble shortestSeconds(double readNoiseE, double electronsPerSecond, double growth) {
        return electronsPerSecond > 0
                ? OptionalDouble.of(constant(growth) * readNoiseE * readNoiseE / electronsPerSecond)
                : OptionalDouble.empty();
    }

    /** By what share reading raises the noise of one exposure. */
    public static double growth(double readNoiseE, double electronsPerSecond, double seconds) {
        return Math.sqrt(1 + readNoiseE * readNoiseE / (electronsPerSecond * seconds)) - 1;
    }
}
