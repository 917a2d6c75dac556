package noctuary.noise;

/**
 * Streaks that fixed-pattern noise leaves when it wanders over the sky while frames are combined.
 *
 * @param strength standard deviation of the streaks over that of the rest of the noise; 0 when none were found
 * @param angleDeg along the streaks, from +x towards +y, over -90 up to 90; NaN when none were found
 * @param significance strength of the evidence in standard errors
 * @param width of the ridge in the autocorrelation, standard deviation across, px
 * @param length over which the pattern wandered, px
 */
record Streak(double strength, double angleDeg, double significance, double width, double length) {
    static final Streak NONE = new Streak(0, Double.NaN, 0, Double.NaN, Double.NaN);

    /** Of the variance of all noise. */
    double share() {
        return strength * strength / (1 + strength * strength);
    }
}
