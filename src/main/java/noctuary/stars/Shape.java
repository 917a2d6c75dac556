package noctuary.stars;

/**
 * A fitted star.
 *
 * @param flux total of the profile, ADU
 * @param x 0-based pixel centre
 * @param logFwhm natural logarithm of the geometric mean width in pixels
 * @param background left over after the mesh, ADU
 * @param fluxError standard errors from the curvature of the fit, as the others
 * @param chiSquare a degree of freedom
 */
record Shape(
        double flux,
        double x,
        double y,
        double logFwhm,
        Shear shear,
        double background,
        double fluxError,
        double logFwhmError,
        double shearError,
        double chiSquare,
        boolean converged) {
    double fwhm() {
        return Math.exp(logFwhm);
    }
}
