package noctuary.stars;

/**
 * The pixels a star is fitted on, as offsets from a whole pixel near it, with the mesh background taken off.
 *
 * @param n how many of each array count
 * @param variance of the sky and the readout a pixel, ADU²; the star's own light comes on top
 * @param backgroundSigma how far the mesh background may be off here, ADU
 */
record Stamp(int x, int y, int n, double[] dx, double[] dy, double[] value, double variance, double backgroundSigma) {}
