package noctuary.demo;

import static noctuary.demo.Glow.add;

/** What the stars too faint to be told apart add up to in a globular cluster (King 1962 profile). */
record ClusterHaze(double coreArcsec, double tidalArcsec, double centreMag) implements Glow {

    @Override
    public void addTo(double x, double y, double[] bands) {
        double density = king(Math.sqrt(x * x + y * y), coreArcsec, tidalArcsec);
        add(bands, Glow.brightness(centreMag) * density, 1.1, 1.0, 0.8);
    }

    /** Surface density relative to the centre: King (1962), Astronomical Journal 67, 471, equation 14. */
    static double king(double radius, double core, double tidal) {
        if (radius >= tidal) {
            return 0;
        }
        double edge = 1 / Math.sqrt(1 + StrictMath.pow(tidal / core, 2));
        double here = 1 / Math.sqrt(1 + StrictMath.pow(radius / core, 2)) - edge;
        return StrictMath.pow(here / (1 - edge), 2);
    }
}
