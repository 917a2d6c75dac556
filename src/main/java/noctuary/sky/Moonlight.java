package noctuary.sky;

/**
 * How bright the Moon makes the sky: Krisciunas &amp; Schaefer 1991 (PASP 103, 1033), V band, 8 to 23 % by their own
 * account, and up to 35 % too faint within a few days of full Moon. Equations from memory.
 */
public final class Moonlight {
    private Moonlight() {}

    /**
     * Surface brightness of scattered moonlight, nanolambert; 0 with the Moon below the horizon.
     *
     * @param target altitude of the sky looked at, above the horizon, degrees
     * @param moon altitude of the Moon, degrees
     * @param apart angle between them, degrees
     * @param phaseAngleDeg 0 at full Moon
     * @param extinction magnitudes lost per airmass
     */
    public static double nanolamberts(
            double target, double moon, double apart, double phaseAngleDeg, double extinction) {
        if (moon <= 0) {
            return 0;
        }
        double light =
                Math.pow(10, -0.4 * (3.84 + 0.026 * Math.abs(phaseAngleDeg) + 4e-9 * Math.pow(phaseAngleDeg, 4)));
        return scattering(apart)
                * light
                * Math.pow(10, -0.4 * extinction * path(moon))
                * (1 - Math.pow(10, -0.4 * extinction * path(target)));
    }

    /** The dark sky at an altitude, nanolambert, from that at the zenith. */
    public static double darkSky(double zenithNanolamberts, double altitudeDeg, double extinction) {
        double path = path(altitudeDeg);
        return zenithNanolamberts * Math.pow(10, -0.4 * extinction * (path - 1)) * path;
    }

    /** V magnitudes per square arcsec of a brightness above zero. */
    public static double magnitude(double nanolamberts) {
        return (20.7233 - Math.log(nanolamberts / 34.08)) / 0.92104;
    }

    /** Nanolambert of V magnitudes per square arcsec. */
    public static double nanolamberts(double magnitude) {
        return 34.08 * Math.exp(20.7233 - 0.92104 * magnitude);
    }

    /** Rayleigh and Mie scattering by the angle from the Moon. */
    private static double scattering(double apartDeg) {
        double cos = Angles.cos(apartDeg);
        double mie = apartDeg < 10 ? 6.2e7 / (apartDeg * apartDeg) : Math.pow(10, 6.15 - apartDeg / 40);
        return Math.pow(10, 5.36) * (1.06 + cos * cos) + mie;
    }

    /** Way of the light through the scattering layer: (1 - 0.96 sin² z)^(-1/2). */
    private static double path(double altitudeDeg) {
        double sinZenith = Angles.cos(altitudeDeg);
        return 1 / Math.sqrt(1 - 0.96 * sinZenith * sinZenith);
    }
}
