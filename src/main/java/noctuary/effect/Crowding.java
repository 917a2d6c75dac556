package noctuary.effect;

import noctuary.stars.Star;

/**
 * How close the stars stand, and what cannot be told because of it once their light was moved about.
 *
 * @param room mean distance to the nearest star, were they scattered at random, in star widths
 */
record Crowding(double room) {
    static final String WIDE =
            "the stars stand too close to each other for the width of stars that were changed so much";
    static final String SMEARED =
            "the stars stand so close that smoothing laid their light over the sky between them, where it passes for noise";

    /** Planted fields of 3.6 widths were out, of 8 were not. */
    private static final double CLOSE = 5;

    private static final double LEAST_SNR = 20;
    /** Square of the width, after over before, from which neighbours touch. */
    private static final double WIDER = 1.6;
    /** The same where a stretch before lifted the wings. */
    private static final double WIDER_STRETCHED = 1.2;
    /** The same below which their dark rings meet. */
    private static final double NARROWER = 0.85;

    static Crowding of(Side from) {
        long count = 0;
        double widths = 0;
        for (Star star : from.stars()) {
            if (star.measured() && star.snr() >= LEAST_SNR) {
                count++;
                widths += star.fwhmPx();
            }
        }
        double apart = 0.5 * Math.sqrt((double) from.width() * from.height() / count);
        return new Crowding(count == 0 ? Double.POSITIVE_INFINITY : apart * count / widths);
    }

    boolean close() {
        return room < CLOSE;
    }

    /** The shapes where they can be trusted. */
    SameStars trusted(SameStars same) {
        return trusted(same, WIDER);
    }

    /** The same on a picture that was stretched before, which lifts the stars' wings into each other. */
    SameStars trustedStretched(SameStars same) {
        return trusted(same, WIDER_STRETCHED);
    }

    private SameStars trusted(SameStars same, double wider) {
        double ratio = same.fwhmRatio().value().orElse(1);
        boolean much = ratio * ratio > wider || ratio * ratio < NARROWER;
        return close() && much ? SameStars.absent(WIDE) : same;
    }
}
