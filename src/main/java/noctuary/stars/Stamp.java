package noctuary.stars;

/**
 * The pixels a star is fitted on, as offsets from a whole pixel near it, with the mesh background taken off.
 *
 * @param n how many of each array count
 * @param variance of the sky and the readout a pixel, ADU²; the star's own light comes on top
 * @param backgroundSigma how far the mesh background may be off here, ADU
 */
record Stamp(int x, int y, int n, double[] dx, double[] dy, double[] value, double variance, double backgroundSigma) {
    private static final double SIGMAS = 8;

    /**
     * Without pixels outside the core that stand far above what the star can give there: hot pixels, cosmic rays,
     * companions nobody found. Compacts the arrays in place.
     */
    Stamp cleaned(MoffatModel star, double x, double y, double core) {
        double most = SIGMAS * Math.sqrt(variance);
        int kept = 0;
        for (int i = 0; i < n; i++) {
            double u = dx[i] - x;
            double v = dy[i] - y;
            boolean far = u * u + v * v > core * core;
            if (!far || value[i] < most + 2 * star.value(dx[i], dy[i])) {
                dx[kept] = dx[i];
                dy[kept] = dy[i];
                value[kept++] = value[i];
            }
        }
        return new Stamp(this.x, this.y, kept, dx, dy, value, variance, backgroundSigma);
    }

    /** The same pixels with other values. */
    Stamp with(double[] values) {
        return new Stamp(x, y, n, dx, dy, values, variance, backgroundSigma);
    }
}
