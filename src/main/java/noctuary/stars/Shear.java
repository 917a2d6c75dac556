package noctuary.stars;

/**
 * Elongation as two components that noise moves symmetrically: |g| = -ln(b/a) / 2, direction 2 theta. Averaging these,
 * not lengths, is what keeps round stars round.
 */
record Shear(double g1, double g2) {
    static Shear of(double ellipticity, double angleDeg) {
        double g = -Math.log(1 - ellipticity) / 2;
        double twice = Math.toRadians(2 * angleDeg);
        return new Shear(g * Math.cos(twice), g * Math.sin(twice));
    }

    double length() {
        return Math.hypot(g1, g2);
    }

    /** 1 - b/a. */
    double ellipticity() {
        return ellipticity(length());
    }

    static double ellipticity(double length) {
        return -Math.expm1(-2 * length);
    }

    /** Of the long axis, from +x towards +y, in (-90, 90]. */
    double angleDeg() {
        return Math.toDegrees(Math.atan2(g2, g1)) / 2;
    }
}
