package noctuary.sky;

import java.time.Instant;
import org.shredzone.commons.suncalc.MoonPosition;

/**
 * The Moon from a place, to about 0.02°. The library's altitude is seen from the Earth's centre, up to 1° above that
 * from the surface: the difference is made up here.
 *
 * @param fromCentre direction from the Earth's centre, for the elongation
 * @param fromSurface direction from the place
 */
record Moon(Horizontal fromCentre, Horizontal fromSurface, double distanceKm) {
    private static final double EARTH_RADIUS_KM = 6378.14;

    static Moon at(Instant instant, SkyPlace place) {
        MoonPosition position = MoonPosition.compute()
                .on(instant)
                .at(place.latitudeDeg(), place.longitudeDeg())
                .execute();
        Horizontal centre = new Horizontal(position.getTrueAltitude(), position.getAzimuth());
        double distanceKm = position.getDistance();
        return new Moon(centre, centre.fromSurface(distanceKm / EARTH_RADIUS_KM), distanceKm);
    }

    /** Share of the disc that is lit, 0 to 1 (Meeus 48.1 and 48.3), from the angle between Sun and Moon. */
    static double litFraction(double elongationDeg, double sunDistanceKm, double moonDistanceKm) {
        return (1 + Angles.cos(phaseAngleDeg(elongationDeg, sunDistanceKm, moonDistanceKm))) / 2;
    }

    /** Angle at the Moon between Sun and Earth, degrees, 0 at full Moon (Meeus 48.3). */
    static double phaseAngleDeg(double elongationDeg, double sunDistanceKm, double moonDistanceKm) {
        return Angles.atan2(
                sunDistanceKm * Angles.sin(elongationDeg), moonDistanceKm - sunDistanceKm * Angles.cos(elongationDeg));
    }
}
