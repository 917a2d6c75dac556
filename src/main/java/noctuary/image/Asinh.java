package noctuary.image;

/** Inverse hyperbolic sine curves for display, after Lupton et al. 2004 (PASP 116, 133). */
public final class Asinh {
    private Asinh() {}

    /** asinh(x) = ln(x + sqrt(x² + 1)), odd. */
    public static double asinh(double x) {
        double size = Math.abs(x);
        return Math.copySign(Math.log(size + Math.sqrt(size * size + 1)), x);
    }

    /** F(x) = asinh(α Q x) / Q of Lupton et al., x counted from the black point. */
    public static double lupton(double x, double alpha, double q) {
        return asinh(alpha * q * x) / q;
    }

    /** 0 at x = 0, 1 at x = 1, straight below {@code softening} and logarithmic above. */
    public static double normalised(double x, double softening) {
        return asinh(x / softening) / asinh(1 / softening);
    }

    /**
     * Lupton's colour rule: every channel times F(I) / I, then divided by the largest if that is above 1, so that
     * bright cores keep their colour. Lupton et al. take the mean of the three for I.
     *
     * @param rgb three values counted from the black point; replaced by values from 0 to 1
     * @param meanShare how much the mean counts in I against the largest: 1 for the rule as published
     * @param white intensity that becomes 1
     */
    public static void colour(float[] rgb, double meanShare, double softening, double white) {
        double top = Math.max(rgb[0], Math.max(rgb[1], rgb[2]));
        double intensity = meanShare * (rgb[0] + rgb[1] + rgb[2]) / 3 + (1 - meanShare) * top;
        if (!(intensity > 0)) {
            rgb[0] = rgb[1] = rgb[2] = 0;
            return;
        }
        double factor = normalised(intensity / white, softening / white) / intensity;
        double share = factor * top > 1 ? 1 / top : factor;
        for (int c = 0; c < 3; c++) {
            rgb[c] = (float) Math.max(0, rgb[c] * share);
        }
    }
}
