package noctuary.noise;

/**
 * Streaks that fixed-pattern noise leaves when it wanders over the sky while frames are combined.
 *
 * @param strength standard deviation of the streaks over that of the rest of the noise; 0 when none were found
 * @param angleDeg along the streaks, from +x towards +y, over -90 up to 90; NaN when none were found
 * @param significance strength of the evidence in standard errors
 */
record Streak(double strength, double angleDeg, double significance) {
    static final Streak NONE = new Streak(0, Double.NaN, 0);
}
