package noctuary.sky;

/**
 * A direction by altitude and azimuth, without refraction.
 *
 * @param azimuthDeg from north towards east, 0 to 360
 */
public record Horizontal(double altitudeDeg, double azimuthDeg) {

    /** From the hour angle (Meeus 13.5 and 13.6, azimuth from the north). */
    static Horizontal of(double hourAngleDeg, double decDeg, double latitudeDeg) {
        double altitude = Angles.asin(Angles.sin(latitudeDeg) * Angles.sin(decDeg)
                + Angles.cos(latitudeDeg) * Angles.cos(decDeg) * Angles.cos(hourAngleDeg));
        double azimuth = Angles.atan2(
                -Angles.cos(decDeg) * Angles.sin(hourAngleDeg),
                Angles.sin(decDeg) * Angles.cos(latitudeDeg)
                        - Angles.cos(decDeg) * Angles.sin(latitudeDeg) * Angles.cos(hourAngleDeg));
        return new Horizontal(altitude, Angles.turn(azimuth));
    }

    /** Of a position of date, where the sidereal time at Greenwich is that. */
    static Horizontal of(Equatorial ofDate, double siderealDeg, SkyPlace place) {
        return of(siderealDeg + place.longitudeDeg() - ofDate.raDeg(), ofDate.decDeg(), place.latitudeDeg());
    }

    /** Angle to another direction, degrees. */
    public double separationDeg(Horizontal other) {
        return Angles.separation(azimuthDeg, altitudeDeg, other.azimuthDeg, other.altitudeDeg);
    }

    /** As seen from the surface instead of the Earth's centre, for a body so many Earth radii away. */
    Horizontal fromSurface(double distanceEarthRadii) {
        double up = Angles.sin(altitudeDeg) - 1 / distanceEarthRadii;
        return new Horizontal(Angles.atan2(up, Angles.cos(altitudeDeg)), azimuthDeg);
    }
}
