package noctuary.fits;

/**
 * The linear world coordinates of a celestial image (FITS 4.0 section 8) at its reference pixel.
 *
 * @param raDeg right ascension of the image centre, degrees
 * @param decDeg declination of the image centre, degrees
 * @param arcsecPerPx square root of the determinant of the transformation, 3600 * sqrt |det M|
 * @param rotationDeg position angle of +y, north through east, 0 to 360
 * @param mirrored true when det M is positive
 */
public record SkyPlane(double raDeg, double decDeg, double arcsecPerPx, double rotationDeg, boolean mirrored) {}
