package noctuary.sky;

import java.time.Instant;
import java.util.OptionalDouble;

/**
 * Sun and Moon over a place at an instant. Altitudes are those of the centres, seen from the surface, without
 * refraction; the Sun's to 0.002°, the Moon's to 0.02°.
 *
 * @param moonLit share of the Moon's disc that is lit, 0 to 1
 * @param moonPhaseAngleDeg angle at the Moon between Sun and Earth, 0 at full Moon
 */
public record SkyAt(
        Instant instant, SkyPlace place, Horizontal sun, Horizontal moon, double moonLit, double moonPhaseAngleDeg) {

    public static SkyAt at(Instant instant, SkyPlace place) {
        Sun sun = Sun.at(instant);
        Moon moon = Moon.at(instant, place);
        double elongation = sun.fromCentre(place).separationDeg(moon.fromCentre());
        double sunDistanceKm = sun.distanceAu() * Sun.KM_PER_AU;
        return new SkyAt(
                instant,
                place,
                sun.from(place),
                moon.fromSurface(),
                Moon.litFraction(elongation, sunDistanceKm, moon.distanceKm()),
                Moon.phaseAngleDeg(elongation, sunDistanceKm, moon.distanceKm()));
    }

    /**
     * A target in that sky.
     *
     * @param direction without refraction, to 0.01°
     * @param airmass Kasten &amp; Young 1989 at the refracted altitude; absent below the horizon
     * @param moonDistanceDeg angle to the Moon as seen from the place
     */
    public record Target(Horizontal direction, OptionalDouble airmass, double moonDistanceDeg) {}

    /** @param j2000 position for the equinox of J2000; precession to the date is applied */
    public Target target(Equatorial j2000) {
        Equatorial ofDate = j2000.precessed(JulianDate.centuries(instant));
        Horizontal direction = Horizontal.of(ofDate, JulianDate.siderealDeg(JulianDate.of(instant)), place);
        double apparent = direction.altitudeDeg() + Airmass.refractionDeg(direction.altitudeDeg());
        return new Target(direction, Airmass.kastenYoung(apparent), direction.separationDeg(moon));
    }
}
