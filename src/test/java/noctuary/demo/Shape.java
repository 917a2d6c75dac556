package noctuary.demo;

/**
 * An elliptical Moffat profile, before the pixel integrates it.
 *
 * @param angleRad of the long axis, from +x towards +y
 */
record Shape(double majorPx, double minorPx, double angleRad) {
    /** From squared widths as a symmetric tensor. */
    static Shape of(double xx, double yy, double xy) {
        double mean = (xx + yy) / 2;
        double half = Math.sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
        double angle = half < 1e-12 ? 0 : 0.5 * StrictMath.atan2(2 * xy, xx - yy);
        return new Shape(Math.sqrt(mean + half), Math.sqrt(mean - half), angle);
    }

    double fwhmPx() {
        return Math.sqrt(majorPx * minorPx);
    }

    double ellipticity() {
        return 1 - minorPx / majorPx;
    }
}
