package noctuary.demo;

import java.time.Instant;

/** Where a target stands, by the short formulas of Meeus, Astronomical Algorithms (1998), 12.4 and 13.6. */
final class Altitude {
    private Altitude() {}

    /** Altitude in degrees, without refraction and precession (together under half a degree above 20 degrees). */
    static double of(DemoSky sky, DemoSite site, Instant when) {
        double days = when.getEpochSecond() / 86400.0 + 2440587.5 - 2451545.0;
        double sidereal = 280.46061837 + 360.98564736629 * days;
        return of(sidereal + site.longitudeDeg() - sky.raDeg(), sky.decDeg(), site.latitudeDeg());
    }

    static double of(double hourAngleDeg, double decDeg, double latitudeDeg) {
        double phi = StrictMath.toRadians(latitudeDeg);
        double delta = StrictMath.toRadians(decDeg);
        double sine = StrictMath.sin(phi) * StrictMath.sin(delta)
                + StrictMath.cos(phi) * StrictMath.cos(delta) * StrictMath.cos(StrictMath.toRadians(hourAngleDeg));
        return StrictMath.toDegrees(StrictMath.asin(sine));
    }

    /** Kasten and Young (1989), Applied Optics 28, 4735. */
    static double airmass(double altitudeDeg) {
        double h = Math.max(1, altitudeDeg);
        return 1 / (StrictMath.sin(StrictMath.toRadians(h)) + 0.50572 * StrictMath.pow(h + 6.07995, -1.6364));
    }
}
