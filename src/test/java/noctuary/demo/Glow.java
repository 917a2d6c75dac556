package noctuary.demo;

/** Light that is no single star: a galaxy, a nebula, the unresolved part of a cluster. */
interface Glow {
    int RED = 0;
    int GREEN = 1;
    int BLUE = 2;
    /** The hydrogen line alone, in units of the red band; the red band's continuum is in {@link #RED}. */
    int LINE = 3;

    /**
     * Adds surface brightness as flux per square arcsecond, in units of a star of magnitude 0.
     *
     * @param x arcsec east of the target's centre in its tangent plane
     * @param y arcsec north
     */
    void addTo(double x, double y, double[] bands);

    /** Flux per square arcsecond of a surface of the given magnitude per square arcsecond. */
    static double brightness(double magPerArcsec2) {
        return StrictMath.pow(10, -0.4 * magPerArcsec2);
    }

    static void add(double[] bands, double amount, double red, double green, double blue) {
        bands[RED] += amount * red;
        bands[GREEN] += amount * green;
        bands[BLUE] += amount * blue;
    }

    Glow NONE = (x, y, bands) -> {};
}
