package noctuary.demo;

/**
 * A star at its place in the target's tangent plane.
 *
 * @param red flux in units of a star of magnitude 0, as green and blue
 */
record CatalogueStar(double eastArcsec, double northArcsec, double red, double green, double blue) {

    /** A star of visual magnitude {@code mag}; colour index 0.6 is white. */
    static CatalogueStar of(double eastArcsec, double northArcsec, double mag, double colourIndex) {
        double flux = Glow.brightness(mag);
        double tint = colourIndex - 0.6;
        return new CatalogueStar(
                eastArcsec,
                northArcsec,
                flux * StrictMath.pow(10, 0.4 * 0.55 * tint),
                flux,
                flux * StrictMath.pow(10, -0.4 * 0.80 * tint));
    }
}
