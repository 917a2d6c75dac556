package noctuary.sky;

/**
 * A direction by right ascension and declination.
 *
 * @param raDeg 0 to 360
 * @param decDeg north positive
 */
public record Equatorial(double raDeg, double decDeg) {

    /** Angle to another direction of the same equinox, degrees. */
    public double separationDeg(Equatorial other) {
        return Angles.separation(raDeg, decDeg, other.raDeg, other.decDeg);
    }

    /**
     * From the equinox of J2000 to that of a date so many centuries later (Meeus 21.2 to 21.4); no nutation, no
     * aberration.
     */
    Equatorial precessed(double centuries) {
        double t = centuries;
        double zeta = t * (2306.2181 + t * (0.30188 + t * 0.017998)) / 3600;
        double z = t * (2306.2181 + t * (1.09468 + t * 0.018203)) / 3600;
        double theta = t * (2004.3109 - t * (0.42665 + t * 0.041833)) / 3600;
        double a = Angles.cos(decDeg) * Angles.sin(raDeg + zeta);
        double b = Angles.cos(theta) * Angles.cos(decDeg) * Angles.cos(raDeg + zeta)
                - Angles.sin(theta) * Angles.sin(decDeg);
        double c = Angles.sin(theta) * Angles.cos(decDeg) * Angles.cos(raDeg + zeta)
                + Angles.cos(theta) * Angles.sin(decDeg);
        return new Equatorial(Angles.turn(Angles.atan2(a, b) + z), Angles.asin(c));
    }
}
