package noctuary.sky;

import java.util.OptionalDouble;

/** How much air a line of sight crosses, in units of the way to the zenith. */
public final class Airmass {
    private Airmass() {}

    /**
     * Kasten &amp; Young 1989 (Applied Optics 28, 4735): 1 / (sin h + 0.50572 (h + 6.07995)^-1.6364); absent below the
     * horizon.
     *
     * @param altitudeDeg apparent, that is with refraction; taking it without costs 0.2 % at 20°, 1 % at 10°
     */
    public static OptionalDouble kastenYoung(double altitudeDeg) {
        if (!(altitudeDeg >= 0)) {
            return OptionalDouble.empty();
        }
        double h = Math.min(90, altitudeDeg);
        return OptionalDouble.of(1 / (Angles.sin(h) + 0.50572 * Math.pow(h + 6.07995, -1.6364)));
    }

    /**
     * How much higher a star appears than it stands, degrees, at 1010 hPa and 10 °C: Saemundsson 1986, in Meeus 16.4;
     * 0 for stars more than 1° below the horizon.
     */
    public static double refractionDeg(double trueAltitudeDeg) {
        if (trueAltitudeDeg < -1) {
            return 0;
        }
        double argument = trueAltitudeDeg + 10.3 / (trueAltitudeDeg + 5.11);
        return Math.max(0, 1.02 / Math.tan(Math.toRadians(argument)) / 60);
    }
}
