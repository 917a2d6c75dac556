package noctuary.stars;

/**
 * What the stars of a frame have in common.
 *
 * @param inverseBetaError standard error of 1 / beta
 * @param logFwhmByInverseBeta how much the logarithmic width of a star changes with it
 * @param photonSlope variance that one ADU of starlight adds, ADU: the inverse of the gain as the fits see it
 */
record Psf(
        Moffat profile,
        double inverseBetaError,
        double logFwhmByInverseBeta,
        double logFwhm,
        Shear shear,
        double photonSlope) {
    double fwhm() {
        return Math.exp(logFwhm);
    }

    /** Relative error of all widths alike, from the error of beta; 0 when that is not known. */
    double sharedError() {
        double error = Math.abs(logFwhmByInverseBeta * inverseBetaError);
        return Double.isNaN(error) ? 0 : error;
    }

    /** Width that the pixels show, profile and pixel together. */
    double shownFwhm() {
        return Math.sqrt(fwhm() * fwhm() + 0.462098);
    }

    /** Radius of the stamps stars are fitted on. */
    double stampRadius() {
        return 2.5 * fwhm() + 2;
    }

    double[] parameters(double flux, double x, double y) {
        return new double[] {flux, x, y, logFwhm, shear.g1(), shear.g2(), 0};
    }

    MoffatModel model(double flux, double x, double y) {
        MoffatModel model = new MoffatModel(profile);
        model.set(parameters(flux, x, y));
        return model;
    }
}
