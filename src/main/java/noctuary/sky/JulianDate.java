package noctuary.sky;

import java.time.Instant;

/** Days and centuries as the formulas count them; numbers of equations are those of Meeus, Astronomical Algorithms. */
final class JulianDate {
    static final double J2000 = 2451545.0;

    private static final double UNIX_EPOCH = 2440587.5;
    private static final double SECONDS_PER_DAY = 86400;
    private static final double DAYS_PER_CENTURY = 36525;
    /** Terrestrial time ahead of UTC since 2017, s: 32.184 and 37 leap seconds; a few seconds less before. */
    private static final double TT_AHEAD_SECONDS = 69.184;

    private JulianDate() {}

    /** Days of universal time. */
    static double of(Instant instant) {
        return UNIX_EPOCH + (instant.getEpochSecond() + instant.getNano() * 1e-9) / SECONDS_PER_DAY;
    }

    /** Julian centuries of terrestrial time since J2000. */
    static double centuries(Instant instant) {
        return (of(instant) + TT_AHEAD_SECONDS / SECONDS_PER_DAY - J2000) / DAYS_PER_CENTURY;
    }

    /** Greenwich mean sidereal time, degrees (12.4). */
    static double siderealDeg(double julianDate) {
        double days = julianDate - J2000;
        double t = days / DAYS_PER_CENTURY;
        return Angles.turn(280.46061837 + 360.98564736629 * days + t * t * (0.000387933 - t / 38710000));
    }
}
