package noctuary.demo;

/**
 * How the target's tangent plane lies on the sensor.
 *
 * @param centreX pixel of the target's centre, first pixel's centre at 0
 * @param rotationDeg position angle of the direction of growing y, north through east
 * @param mirrored east and west exchanged
 */
record Pointing(
        int width,
        int height,
        double centreX,
        double centreY,
        double arcsecPerPx,
        double rotationDeg,
        boolean mirrored) {

    Pointing shifted(double dx, double dy) {
        return new Pointing(width, height, centreX + dx, centreY + dy, arcsecPerPx, rotationDeg, mirrored);
    }

    double east(double x, double y) {
        return cd11() * (x - centreX) + cd12() * (y - centreY);
    }

    double north(double x, double y) {
        return cd21() * (x - centreX) + cd22() * (y - centreY);
    }

    double x(double east, double north) {
        return centreX + (cd11() * east + cd21() * north) / (arcsecPerPx * arcsecPerPx);
    }

    double y(double east, double north) {
        return centreY + (cd12() * east + cd22() * north) / (arcsecPerPx * arcsecPerPx);
    }

    /** Arcsec east per pixel along x, and so on for the other three. */
    double cd11() {
        return (mirrored ? 1 : -1) * arcsecPerPx * StrictMath.cos(turn());
    }

    double cd12() {
        return arcsecPerPx * StrictMath.sin(turn());
    }

    double cd21() {
        return (mirrored ? -1 : 1) * arcsecPerPx * StrictMath.sin(turn());
    }

    double cd22() {
        return arcsecPerPx * StrictMath.cos(turn());
    }

    private double turn() {
        return StrictMath.toRadians(rotationDeg);
    }
}
