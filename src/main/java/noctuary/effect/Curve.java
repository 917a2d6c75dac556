package noctuary.effect;

import noctuary.image.Asinh;

/**
 * The curve base + height asinh((x - middle) / softness), after Lupton et al. 2004 (PASP 116, 133): straight within a
 * softness of the middle, logarithmic far above.
 *
 * @param middle in the origin's units
 * @param softness as middle
 * @param base value at the middle, as a share of white
 * @param height as base
 */
record Curve(double middle, double softness, double base, double height) {
    double at(double x) {
        return base + height * Asinh.asinh((x - middle) / softness);
    }

    double slope(double x) {
        double u = (x - middle) / softness;
        return height / softness / Math.sqrt(1 + u * u);
    }

    /** Where the curve reaches {@code value}. */
    double reaches(double value) {
        return middle + softness * Math.sinh((value - base) / height);
    }

    /**
     * The parameter of a normalised asinh curve: how many softnesses lie between the middle and what became white. 0 for
     * a straight line.
     */
    double strength() {
        return Math.sinh((1 - base) / height);
    }
}
