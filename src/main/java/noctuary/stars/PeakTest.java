package noctuary.stars;

/**
 * What a peak of the filtered plane must show to be taken for a star.
 *
 * @param sigmas over the noise of sky and of the light around
 * @param photonSlope variance that one ADU of light adds, ADU
 */
record PeakTest(MatchedFilter filter, PointTest points, double sigmas, double photonSlope) {
    /** Share of the threshold that must be left once what a ridge would give is taken off. */
    private static final double OFF_RIDGE = 0.8;

    /** The least response above sky noise of so much a pixel and light of so much above the sky. */
    double threshold(double noise, double light) {
        return sigmas * Math.sqrt(noise * noise + photonSlope * Math.max(0, light)) * filter.norm();
    }

    boolean offRidge(double response, double ridge, double threshold) {
        return response - Math.max(0, ridge) > OFF_RIDGE * threshold;
    }
}
