package noctuary.advice;

/**
 * Signal against noise of a counting sensor: the CCD equation as in Merline &amp; Howell 1995 (Exp. Astron. 6, 163) and
 * Howell, <cite>Handbook of CCD Astronomy</cite>, all in electrons.
 */
public final class CcdEquation {
    /** Standard deviation of rounding to whole counts, in counts: sqrt(1/12). */
    private static final double ROUNDING = Math.sqrt(1 / 12.0);

    private CcdEquation() {}

    /**
     * What one pixel of the background gathers in one exposure.
     *
     * @param skyE electrons from the sky
     * @param darkE electrons of dark current
     * @param readNoiseE standard deviation of reading
     * @param gainEPerAdu 0 to leave rounding out
     */
    public record Pixel(double skyE, double darkE, double readNoiseE, double gainEPerAdu) {
        /** Variance, squared electrons. */
        public double variance() {
            double rounding = gainEPerAdu * ROUNDING;
            return skyE + darkE + readNoiseE * readNoiseE + rounding * rounding;
        }
    }

    /**
     * S / sqrt(S + n (1 + n / nB) V), with V the variance of a pixel.
     *
     * @param signalE electrons of the object
     * @param pixels n that the object covers
     * @param backgroundPixels nB that the background was taken from; infinite for one that is known
     */
    public static double snr(double signalE, double pixels, double backgroundPixels, Pixel pixel) {
        double variance = signalE + pixels * (1 + pixels / backgroundPixels) * pixel.variance();
        return signalE / Math.sqrt(variance);
    }

    /** Error in magnitudes at that ratio: 2.5 / ln 10 / SNR. */
    public static double magnitudeError(double snr) {
        return 2.5 / Math.log(10) / snr;
    }
}
