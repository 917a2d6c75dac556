package noctuary.sky;

import java.time.Instant;

/**
 * The apparent Sun from the Earth's centre, to about 0.001°: {@link EarthOrbit} turned round, with aberration and the
 * two largest terms of nutation (Meeus, Astronomical Algorithms, chapters 22 and 25). The library that gives the Moon
 * has a Sun too, but one off by up to 0.02°, which moves twilight by several seconds.
 *
 * @param siderealDeg apparent sidereal time at Greenwich at that instant
 */
record Sun(Equatorial position, double distanceAu, double siderealDeg) {
    static final double EARTH_RADII_PER_AU = 23454.8;
    static final double KM_PER_AU = 149597870.7;

    /** 20.4898 arcsec. */
    private static final double ABERRATION_DEG = 0.0056916;

    static Sun at(Instant instant) {
        return at(JulianDate.centuries(instant), JulianDate.siderealDeg(JulianDate.of(instant)));
    }

    static Sun at(double t, double meanSiderealDeg) {
        double trueLongitude = EarthOrbit.longitudeDeg(t) + 180;
        double distance = EarthOrbit.distanceAu(t);
        double node = 125.04452 - 1934.136261 * t;
        double nutation = -0.004778 * Angles.sin(node) - 0.000367 * Angles.sin(2 * trueLongitude);
        double longitude = trueLongitude + nutation - ABERRATION_DEG / distance;
        double obliquity = 23.43929111
                - t * (0.0130041667 + t * (1.639e-7 - t * 5.036e-7))
                + 0.002556 * Angles.cos(node)
                + 0.000158 * Angles.cos(2 * trueLongitude);
        double ra = Angles.atan2(Angles.cos(obliquity) * Angles.sin(longitude), Angles.cos(longitude));
        double dec = Angles.asin(Angles.sin(obliquity) * Angles.sin(longitude));
        double sidereal = meanSiderealDeg + nutation * Angles.cos(obliquity);
        return new Sun(new Equatorial(Angles.turn(ra), dec), distance, sidereal);
    }

    /** Direction from the Earth's centre. */
    Horizontal fromCentre(SkyPlace place) {
        return Horizontal.of(position, siderealDeg, place);
    }

    Horizontal from(SkyPlace place) {
        return fromCentre(place).fromSurface(distanceAu * EARTH_RADII_PER_AU);
    }
}
