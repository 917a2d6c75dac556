package noctuary.advice;

/** How long an exposure must be for a signal-to-noise ratio, or for the same one under another sky or with another rig. */
public final class EqualDepth {
    /** Magnitudes that a ten times longer exposure goes deeper: 2.5 log10 of the root of ten. */
    private static final double MAGNITUDES_A_DECADE = 1.25;

    private EqualDepth() {}

    /**
     * Seconds for a ratio in one pixel: SNR² (S + B + D + RN² / t) / S², all rates in electrons a second.
     *
     * @param subSeconds t, of one exposure
     */
    public static double seconds(
            double snr, double signal, double sky, double dark, double readNoiseE, double subSeconds) {
        double variance = signal + sky + dark + readNoiseE * readNoiseE / subSeconds;
        return snr * snr * variance / (signal * signal);
    }

    /**
     * Time there over time here for the same ratio of a faint extended object.
     *
     * @param varianceRatio squared noise there over here, a second and square arcsecond
     * @param signalRatio light of the object there over here, a second and square arcsecond
     */
    public static double timeRatio(double varianceRatio, double signalRatio) {
        return varianceRatio / (signalRatio * signalRatio);
    }

    /** Brightness ratio of skies that many magnitudes apart. */
    public static double brightness(double magnitudes) {
        return Math.pow(10, 0.4 * magnitudes);
    }

    /** Total time over the time there is, to go that much deeper while the noise falls with the root of time. */
    public static double timeForMagnitudes(double magnitudes) {
        return Math.pow(10, magnitudes / MAGNITUDES_A_DECADE);
    }

    /** How much deeper a longer exposure goes. */
    public static double magnitudesForTime(double ratio) {
        return MAGNITUDES_A_DECADE * Math.log10(ratio);
    }
}
